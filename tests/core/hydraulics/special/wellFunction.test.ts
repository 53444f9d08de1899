import { describe, expect, it } from 'vitest';
import { eulerGamma, wellFunction } from '../../../../core/hydraulics/special/wellFunction.ts';
import { off } from '../values.ts';

/**
 * W(u), as printed to 4 or 5 figures in Wenzel 1942 (USGS Water-Supply Paper 887) and Abramowitz
 * and Stegun, chapter 5; further digits from a library's exponential integral.
 */
const printed: readonly (readonly [number, number])[] = [
  [1e-10, 22.448635],
  [1e-8, 17.843465],
  [1e-6, 13.238296],
  [1e-5, 10.93572],
  [1e-4, 8.6332247],
  [0.001, 6.3315394],
  [0.002, 5.6393914],
  [0.005, 4.7260955],
  [0.01, 4.0379296],
  [0.02, 3.3547078],
  [0.03, 2.9591187],
  [0.05, 2.4678985],
  [0.08, 2.026941],
  [0.1, 1.822924],
  [0.2, 1.2226505],
  [0.3, 0.90567665],
  [0.5, 0.55977359],
  [0.7, 0.37376884],
  [1, 0.21938393],
  [1.5, 0.10001958],
  [2, 0.048900511],
  [3, 0.013048381],
  [4, 0.0037793524],
  [5, 0.0011482956],
  [6, 3.6008e-4],
  [7, 1.1548173e-4],
  [9, 1.2447354e-5],
];

/** Error of −γ − ln u against W(u), per cent; computed for the reference table. */
const errors: readonly (readonly [number, number])[] = [
  [0.001, 0.016],
  [0.01, 0.25],
  [0.02, 0.59],
  [0.03, 1.0],
  [0.05, 2.0],
  [0.1, 5.4],
  [0.2, 15.6],
];

describe('the well function', () => {
  it.each(printed)('at u = %s is %s', (u, W) => {
    expect(off(wellFunction(u), W)).toBeLessThan(u === 6 ? 2e-5 : 1e-6);
  });

  it('is continuous where the series gives way to the fraction', () => {
    expect(off(wellFunction(1 + 1e-12), wellFunction(1))).toBeLessThan(1e-11);
  });

  it.each(errors)('is missed by the logarithm at u = %s by %s per cent', (u, percent) => {
    const missed = 1 - (-eulerGamma - Math.log(u)) / wellFunction(u);
    expect(100 * missed).toBeCloseTo(percent, percent < 0.1 ? 3 : percent < 1 ? 2 : 1);
  });

  it('is infinite at nil, nothing for large u, and not a number below nil', () => {
    expect(wellFunction(0)).toBe(Infinity);
    expect(wellFunction(1000)).toBe(0);
    expect(wellFunction(-1)).toBeNaN();
    expect(wellFunction(NaN)).toBeNaN();
  });
});
