import { describe, expect, it } from 'vitest';
import { analyseOne } from './inRecord.ts';
import { drawdownOf, logMinutes } from './synthetic.ts';

const near = { T: 50, S: 0.001, r: 0.1 };
const rates = [{ fromMin: 0, rateM3d: 48 }];

/** Drawdown with a mirrored well `away` metres off: +1 for a tight wall, −1 for a river. */
function hintsWith(mirror: 1 | -1 | 0, away: number) {
  const series = logMinutes(2880, 45).map((minutes) => ({
    minutes,
    reading:
      drawdownOf(near, rates, minutes) + mirror * drawdownOf({ ...near, r: away }, rates, minutes),
  }));
  return analyseOne({ kind: 'constantRate', restLevel: 0, rate: 2, series }).hints;
}

describe('the shape of a drawdown', () => {
  it('hints at a tight boundary where the slope doubles, as images of wells make it', () => {
    const [hint, ...others] = hintsWith(1, 25);
    expect(others).toEqual([]);
    expect(hint!.code).toBe('slopeDoubling');
    expect(hint!.values.ratio).toBeGreaterThan(1.7);
    expect(hint!.values.ratio).toBeLessThan(2.4);
  });

  it('hints at water from elsewhere where it flattens', () => {
    expect(hintsWith(-1, 25).map(({ code }) => code)).toEqual(['flattening']);
  });

  it('hints at even ground where the slope stays', () => {
    expect(hintsWith(0, 1).map(({ code }) => code)).toEqual(['stabilised']);
  });

  it('hints at nothing where there are few readings', () => {
    const series = [1, 2, 4].map((minutes) => ({ minutes, reading: minutes / 10 }));
    expect(analyseOne({ kind: 'constantRate', restLevel: 0, rate: 2, series }).hints).toEqual([]);
  });
});
