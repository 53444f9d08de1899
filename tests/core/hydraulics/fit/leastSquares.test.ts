import { describe, expect, it } from 'vitest';
import { fitColumns, halfWidth } from '../../../../core/hydraulics/fit/leastSquares.ts';
import { fitLine, heightHalfWidth, slopeHalfWidth } from '../../../../core/hydraulics/fit/line.ts';

/**
 * Anscombe 1973, first set: y = 3.0001 + 0.5001 x, R² 0.6665, standard errors of intercept 1.1247
 * and slope 0.1179 (from memory); t of 9 degrees of freedom 2.2622.
 */
const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
const y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];

describe('a least-squares line', () => {
  const line = fitLine(x, y)!;

  it('has the published slope, height and share explained', () => {
    expect(line.at0).toBeCloseTo(3.0001, 4);
    expect(line.slope).toBeCloseTo(0.5001, 4);
    expect(line.r2).toBeCloseTo(0.6665, 4);
  });

  it('has intervals of the published standard errors', () => {
    expect(slopeHalfWidth(line)! / 2.2622).toBeCloseTo(0.1179, 4);
    expect(heightHalfWidth(line, 0)! / 2.2622).toBeCloseTo(1.1247, 4);
  });

  it('is narrowest at the middle of the readings', () => {
    expect(heightHalfWidth(line, 9)!).toBeLessThan(heightHalfWidth(line, 14)!);
  });

  it('has no interval through two readings, and is none through one or through readings at one x', () => {
    expect(slopeHalfWidth(fitLine([1, 2], [1, 3])!)).toBeUndefined();
    expect(fitLine([1], [1])).toBeUndefined();
    expect(fitLine([2, 2, 2], [1, 2, 3])).toBeUndefined();
  });
});

describe('a fit of columns', () => {
  it('returns the coefficients that made the values, of very different sizes too', () => {
    const rates = [1000, 2000, 3000, 4000, 5000];
    const fit = fitColumns(
      [rates, rates.map((rate) => rate ** 2)],
      rates.map((rate) => 3e-3 * rate + 1e-7 * rate ** 2),
    )!;
    expect(fit.coefficients[0]).toBeCloseTo(3e-3, 10);
    expect(fit.coefficients[1]! * 1e7).toBeCloseTo(1, 6);
    expect(halfWidth(fit, [1, 0])).toBeLessThan(1e-10);
  });

  it('is none where columns are alike or readings too few', () => {
    expect(
      fitColumns(
        [
          [1, 2, 3],
          [2, 4, 6],
        ],
        [1, 2, 3],
      ),
    ).toBeUndefined();
    expect(fitColumns([[1], [2]], [1])).toBeUndefined();
  });
});
