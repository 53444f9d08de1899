import { describe, expect, it } from 'vitest';
import { resolve, said } from './well.ts';

const bore = { depthReached: 10 };

describe('samples of the ground', () => {
  it('keep their order and their places, to the micron', () => {
    const samples = [
      { from: 1, to: 2.0000004 },
      { from: 0, to: 1 },
    ];
    expect(resolve({ bore, samples }).samples).toEqual([
      { fromM: 1, toM: 2, path: 'samples[0]' },
      { fromM: 0, toM: 1, path: 'samples[1]' },
    ]);
  });

  it('may come from one depth, which is no fault', () => {
    const model = resolve({ bore, samples: [{ from: 4, to: 4 }] });
    expect(model.samples).toEqual([{ fromM: 4, toM: 4, path: 'samples[0]' }]);
    expect(model.findings.filter(({ code }) => code.startsWith('sample.'))).toEqual([]);
  });

  it('written the wrong way round are turned, and that is said', () => {
    const model = resolve({ bore, samples: [{ from: 5, to: 4 }] });
    expect(model.samples).toEqual([{ fromM: 4, toM: 5, path: 'samples[0]' }]);
    expect(said(model, 'sample.reversed')).toMatchObject([
      { severity: 'error', path: 'samples[0]', fromM: 4, toM: 5 },
    ]);
  });

  it('from below the hole contradict it; one that ends at its foot does not', () => {
    const samples = [
      { from: 9, to: 10 },
      { from: 10, to: 11 },
    ];
    expect(said(resolve({ bore, samples }), 'sample.belowHole')).toMatchObject([
      { path: 'samples[1]', values: { depthM: 10 }, fromM: 10, toM: 11 },
    ]);
  });

  it('contradict no depth where none is known', () => {
    const model = resolve({ samples: [{ from: 90, to: 91 }] });
    expect(said(model, 'sample.belowHole')).toEqual([]);
  });
});
