import { describe, expect, it } from 'vitest';
import { gapsIn, layFlat, roundDepth } from '../../../core/model/range.ts';

describe('a depth', () => {
  it('is kept to the micron, so that sums of pipes end where they should', () => {
    expect(0.1 + 0.2).not.toBe(0.3);
    expect(roundDepth(0.1 + 0.2)).toBe(0.3);
    expect(Object.is(roundDepth(-1e-9), 0)).toBe(true);
  });

  it('survives what no well can be', () => {
    for (const wild of [1e300, -1e300, Infinity, NaN]) expect(roundDepth(wild)).toBe(wild);
  });
});

describe('ranges laid flat', () => {
  it('keep one that two others touch, whole', () => {
    const items = [
      { fromM: 0, toM: 4 },
      { fromM: 4, toM: 6 },
    ];
    expect(layFlat(items, (a) => a)).toEqual(items.map((item) => ({ ...item, item })));
  });
});

describe('gaps', () => {
  it('reach over bounds that lie outside the ranges', () => {
    expect(gapsIn([{ fromM: -2, toM: -1 }], 0, 5)).toEqual([{ fromM: 0, toM: 5 }]);
    expect(gapsIn([{ fromM: -2, toM: 9 }], 0, 5)).toEqual([]);
    expect(gapsIn([], 5, 5)).toEqual([]);
  });
});
