import { describe, expect, it } from 'vitest';
import { fitTheis } from '../../../../core/hydraulics/fit/theisFit.ts';
import { logan } from '../../../../core/hydraulics/methods/onePoint.ts';
import { cooperJacob, theisRecovery } from '../../../../core/hydraulics/methods/straightLine.ts';
import { theis } from '../../../../core/hydraulics/methods/theis.ts';
import type { HandWindow } from '../../../../core/hydraulics/results.ts';
import { drawdowns, oudeKorendijk, todd } from '../published.ts';
import { off, valueOf } from '../values.ts';

const { rateM3d, at30, at90 } = oudeKorendijk;
const near = drawdowns(at30, rateM3d);
const far = drawdowns(at90, rateM3d);

function line(data: typeof near, distanceM: number, window: HandWindow) {
  return cooperJacob(data, { distanceM, window });
}

/**
 * Oude Korendijk by the straight line: windows, readings and results as reckoned for the project's
 * reference table; 385 m²/d and 1.7e-4 are also what Kruseman and de Ridder print, section 3.2.2
 * (from memory).
 */
const lines = [
  { data: near, r: 30, fromMin: 1, toMin: 10, n: 12, T: 385.0, S: 1.67e-4 },
  { data: near, r: 30, fromMin: 20, toMin: 830, n: 16, T: 607.0, S: 2.22e-5 },
  { data: near, r: 30, fromMin: 100, toMin: 830, n: 9, T: 636.3, S: 1.45e-5 },
  { data: far, r: 90, fromMin: 50, toMin: 845, n: 17, T: 600.8, S: 9.47e-5 },
];

describe('Oude Korendijk', () => {
  it.each(lines)('by the straight line, $r m, $fromMin to $toMin min', (one) => {
    const result = line(one.data, one.r, one)!;
    expect(result.used).toMatchObject({ count: one.n, chosen: 'byHand' });
    expect(off(valueOf(result, 'transmissivity'), one.T)).toBeLessThan(0.005);
    expect(off(valueOf(result, 'storage'), one.S)).toBeLessThan(0.005);
  });

  it('has the slope of the published line, 0.3751 m over a cycle', () => {
    expect(valueOf(line(near, 30, { fromMin: 1, toMin: 10 }), 'slope')).toBeCloseTo(0.3751, 3);
  });

  it('fails the rule on u in the published window, where u is 0.14', () => {
    const [uSmall] = line(near, 30, { fromMin: 1, toMin: 10 })!.checks;
    expect(uSmall).toMatchObject({ code: 'uSmall', holds: false });
    expect(uSmall!.values.first).toBeCloseTo(0.14, 2);
  });

  it.each([
    { data: near, r: 30 },
    { data: far, r: 90 },
  ])(
    'gives another transmissivity where the program chooses, $r m: late and by the rule',
    ({ data, r }) => {
      const result = cooperJacob(data, { distanceM: r })!;
      expect(result.used.chosen).toBe('automatic');
      expect(result.checks.every(({ holds }) => holds)).toBe(true);
      expect(result.used.fromMin).toBeGreaterThan(10);
      expect(valueOf(result, 'transmissivity')).toBeGreaterThan(500);
    },
  );

  /** By least squares on s; both together also as an independent public fit has it (RMSE 0.05006). */
  it.each([
    { data: near, r: 30, T: 480.5, S: 1.125e-4, rms: 0.0317 },
    { data: far, r: 90, T: 501.1, S: 2.04e-4, rms: 0.0227 },
  ])('by the curve, $r m', ({ data, r, T, S, rms }) => {
    const result = theis(data, { distanceM: r }, undefined)!;
    expect(off(valueOf(result, 'transmissivity'), T)).toBeLessThan(0.01);
    expect(off(valueOf(result, 'storage'), S)).toBeLessThan(0.01);
    expect(result.rmsM).toBeCloseTo(rms, 4);
    expect(result.used.chosen).toBe('all');
  });

  it('by the curve, both wells together', () => {
    const together = [
      ...near.readings.map((one) => ({ ...one, distanceM: 30 })),
      ...far.readings.map((one) => ({ ...one, distanceM: 90 })),
    ];
    const fit = fitTheis(together, near.rates)!;
    expect(off(fit.transmissivityM2d, 462.6)).toBeLessThan(0.005);
    expect(off(fit.storage, 1.779e-4)).toBeLessThan(0.005);
    expect(fit.rmsM).toBeCloseTo(0.0501, 4);
    expect(off(fit.transmissivityM2d, 66.09 * 7)).toBeLessThan(0.001);
  });

  /** Kruseman and de Ridder, section 3.2.1 (from memory): match by hand 392 m²/d, 1.6e-4. */
  it('has the hand match of the far well within what a hand match is worth', () => {
    const early = theis(far, { distanceM: 90, window: { fromMin: 1, toMin: 60 } }, undefined)!;
    expect(off(valueOf(early, 'transmissivity'), 392)).toBeLessThan(0.1);
  });
});

describe('Todd’s test', () => {
  const { distanceM, pumpedMin } = todd;
  const pumping = drawdowns(todd.drawdown, todd.rateM3d);
  const recovery = { ...drawdowns(todd.residual, todd.rateM3d), pumpedMin };

  /** Reckoned for the reference table; the book's hand match is 1110 and 2.06e-4 (from memory). */
  it('by the curve', () => {
    const result = theis(pumping, { distanceM }, undefined)!;
    expect(off(valueOf(result, 'transmissivity'), 1138)).toBeLessThan(0.005);
    expect(off(valueOf(result, 'storage'), 1.93e-4)).toBeLessThan(0.005);
    expect(result.rmsM).toBeCloseTo(0.0052, 4);
    expect(off(valueOf(result, 'transmissivity'), 1110)).toBeLessThan(0.05);
  });

  /** Reckoned for the reference table; the book has 1090 and 1.84e-4 (from memory). */
  it('by the straight line from 10 min on', () => {
    const result = cooperJacob(pumping, { distanceM, window: { fromMin: 10, toMin: 240 } })!;
    expect(result.used.count).toBe(16);
    expect(off(valueOf(result, 'transmissivity'), 1147)).toBeLessThan(0.005);
    expect(off(valueOf(result, 'storage'), 1.85e-4)).toBeLessThan(0.005);
  });

  /** Reckoned for the reference table; the book's line of 0.40 m gives 1140 (from memory). */
  it.each([
    { fromMin: 1, T: 1187, slope: 0.3859 },
    { fromMin: 7, T: 1109, slope: 0.413 },
  ])('by the recovery from $fromMin min on', ({ fromMin, T, slope }) => {
    const result = theisRecovery(recovery, { distanceM, window: { fromMin, toMin: 180 } })!;
    expect(off(valueOf(result, 'transmissivity'), T)).toBeLessThan(0.005);
    expect(valueOf(result, 'slope')).toBeCloseTo(slope, 3);
    expect(off(valueOf(result, 'transmissivity'), 1140)).toBeLessThan(0.05);
  });
});

describe('the one-point estimate', () => {
  /** Logan 1964, T = 1.22 Q/s (from memory). */
  it.each([
    { Q: 24, s: 2.0, T: 14.64 },
    { Q: 788, s: 2.236, T: 429.9 },
  ])('of $Q m³/d and $s m', ({ Q, s, T }) => {
    const result = logan(drawdowns([[600, s]], Q).readings)!;
    expect(off(valueOf(result, 'transmissivity'), T)).toBeLessThan(0.001);
    const { interval } = result.estimates[0]!;
    expect(interval).toMatchObject({ lowest: expect.closeTo(T / 2, 1), basis: 'spread' });
  });
});
