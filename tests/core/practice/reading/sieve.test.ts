import { describe, expect, it } from 'vitest';
import { sizeFiner, uniformity } from '../../../../core/practice/reading/sieve.ts';

const curve = [
  { size: 1, finer: 90 },
  { size: 0.25, finer: 30 },
  { size: 0.125, finer: 8 },
  { size: 0.5, finer: 60 },
];

describe('a size read from a sieve curve', () => {
  it('is interpolated on the logarithm of the size (soil mechanics, common practice)', () => {
    // 0.125 × 2^(2/22) = 0.1331 mm.
    expect(sizeFiner(curve, 10)).toBeCloseTo(0.1331, 4);
    expect(sizeFiner(curve, 45)).toBeCloseTo(0.25 * Math.SQRT2, 6);
  });

  it('is that of a sieve where the curve passes through it', () => {
    expect(sizeFiner(curve, 30)).toBe(0.25);
    expect(sizeFiner(curve, 8)).toBe(0.125);
  });

  it('is unknown beyond the curve', () => {
    expect(sizeFiner(curve, 5)).toBeUndefined();
    expect(sizeFiner(curve, 95)).toBeUndefined();
    expect(sizeFiner([], 30)).toBeUndefined();
  });

  it('is unknown where the curve contradicts itself', () => {
    const wrong = [
      { size: 0.25, finer: 40 },
      { size: 0.5, finer: 30 },
      { size: 1, finer: 90 },
    ];
    expect(sizeFiner(wrong, 35)).toBeUndefined();
  });
});

describe('the uniformity of grain', () => {
  it('is d60 over d10', () => {
    expect(uniformity(curve)).toBeCloseTo(0.5 / 0.1331, 2);
  });

  it('of a pack with d10 0.70 and d60 1.30 mm is 1.86 (worked from the US EPA rule)', () => {
    const pack = [
      { size: 0.7, finer: 10 },
      { size: 1.3, finer: 60 },
    ];
    expect(uniformity(pack)).toBeCloseTo(1.86, 2);
  });

  it('is unknown where the curve does not reach d10', () => {
    expect(uniformity(curve.slice(0, 2))).toBeUndefined();
  });
});
