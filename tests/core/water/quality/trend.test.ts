import { describe, expect, it } from 'vitest';
import { judge, resultOf, sample, type Row } from './samples.ts';

function trend(parameter: string, rows: readonly (Omit<Row, 'parameter'> & { at?: string })[]) {
  const samples = rows.map(({ at, ...row }, nth) =>
    sample(at ?? `202${nth}-01-01`, { unit: 'mg/l', ...row, parameter } as Row),
  );
  return resultOf(judge(samples), parameter).trend;
}

describe('repeated samples', () => {
  it('tell the first, the last, how many, and which way', () => {
    expect(trend('iron', [{ value: 0.2 }, { value: 0.5 }])).toMatchObject({
      first: { value: 0.2 },
      last: { value: 0.5 },
      count: 2,
      direction: 'up',
      steady: false,
    });
    expect(trend('iron', [{ value: 0.2 }, { value: 0.3 }, { value: 0.5 }])).toMatchObject({
      count: 3,
      direction: 'up',
      steady: true,
    });
    expect(trend('iron', [{ value: 0.5 }, { value: 0.7 }, { value: 0.2 }])).toMatchObject({
      direction: 'down',
      steady: false,
    });
  });

  it('are the same within what two tests of one water differ by', () => {
    expect(trend('iron', [{ value: 0.5 }, { value: 0.54 }])?.direction).toBe('same');
    expect(trend('iron', [{ value: 0.5 }, { value: 0.46 }])?.direction).toBe('same');
  });

  it('are compared with detection limits as far as those tell', () => {
    const limit = { value: 0.1, below: true };
    expect(trend('iron', [limit, { value: 0.5 }])?.direction).toBe('up');
    expect(trend('iron', [{ value: 0.5 }, limit])?.direction).toBe('down');
    expect(trend('iron', [limit, { value: 0.05 }])?.direction).toBe('unclear');
    expect(trend('iron', [limit, limit])?.direction).toBe('same');
    expect(trend('iron', [limit, { value: 0.01, below: true }])?.direction).toBe('unclear');
  });

  it('of bacteria are compared by their bands, since counts scatter', () => {
    const count = (value: number) => ({ value, unit: 'CFU/100 ml' });
    expect(trend('eColi', [count(2), count(9)])?.direction).toBe('same');
    expect(trend('eColi', [count(2), count(40)])?.direction).toBe('up');
    expect(trend('eColi', [count(40), count(0)])?.direction).toBe('down');
  });

  it('are none where there is one, where no day is known, or where rows stand in one sample', () => {
    expect(trend('iron', [{ value: 0.2 }])).toBeUndefined();
    const row = { parameter: 'iron', value: 0.2, unit: 'mg/l' };
    expect(resultOf(judge([sample(undefined, row), sample('2026-01-01', row)]), 'iron').trend).toBe(
      undefined,
    );
    expect(resultOf(judge([sample('2026-01-01', row, row)]), 'iron').trend).toBeUndefined();
  });
});
