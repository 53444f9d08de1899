import { describe, expect, it } from 'vitest';
import { lossLine, laminarShare } from '../../../../core/hydraulics/methods/hantushBierschenk.ts';
import { analyseOne, byMethod } from '../inRecord.ts';
import { clarkRates, table } from '../published.ts';
import { estimateOf, off, valueOf } from '../values.ts';

/** A step test of one reading a step (m³/d, m), as the ends of steps. */
function ends(pairs: readonly (readonly [number, number])[]) {
  return analyseOne({
    kind: 'step',
    restLevel: 0,
    series: pairs.map(([Q, reading], at) => ({ minutes: 60, reading, rate: Q / 24, step: at + 1 })),
  });
}

describe('the step test of Clark 1977, well 1', () => {
  const drawdowns = [4.505, 5.935, 8.75, 12.173, 15.777, 20.015];
  /** B and C as worked in Kruseman and de Ridder, section 14.1.1 (from memory). */
  const [B, C] = [3.26e-3, 1.45e-7];

  it('gives B and C again from drawdowns rebuilt of them', () => {
    const result = byMethod(
      ends(clarkRates.map((Q, at) => [Q, drawdowns[at]!])),
      'hantushBierschenk',
    );
    expect(off(valueOf(result, 'aquiferLoss'), B)).toBeLessThan(0.001);
    expect(off(valueOf(result, 'wellLoss'), C)).toBeLessThan(0.001);
    expect(result!.assumptions.map(({ code }) => code)).toContain('stepEndsAsRead');
  });

  const minutesOfStep = 180;
  const read = table('clark-step-drawdown.csv').map(([seconds, reading]) => {
    const step = Math.ceil(seconds / 60 / minutesOfStep);
    const minutes = seconds / 60 - (step - 1) * minutesOfStep;
    return { minutes, reading, rate: clarkRates[step - 1]! / 24, step };
  });

  const analysis = analyseOne({ kind: 'step', restLevel: 0, minutesPumped: 1080, series: read });
  const result = byMethod(analysis, 'hantushBierschenk');

  it('has the published C within the interval that its readings give', () => {
    const { interval } = estimateOf(result, 'wellLoss');
    expect(interval!.lowest).toBeLessThan(C);
    expect(interval!.highest).toBeGreaterThan(C);
    expect(off(valueOf(byMethod(analysis, 'edenHazel'), 'wellLoss'), C)).toBeLessThan(0.1);
  });

  /** The published increments are those of 100 min, the program's those of whole steps. */
  it('has the published B, brought from the length of a step to 100 min', () => {
    const T = valueOf(byMethod(analysis, 'edenHazel'), 'transmissivity');
    const growth = (Math.LN10 / (4 * Math.PI * T)) * Math.log10(minutesOfStep / 100);
    expect(off(valueOf(result, 'aquiferLoss') - growth, B)).toBeLessThan(0.03);
    expect(result!.assumptions).toContainEqual({
      code: 'stepsFreedOfTails',
      values: { minutes: minutesOfStep },
    });
  });
});

describe('an exact step test of village size', () => {
  /** Reckoned from B 0.02 d/m² and C 1e-4 d²/m⁵. */
  const exact = [
    { Q: 24, s: 0.5376, laminar: 89.29 },
    { Q: 36, s: 0.8496, laminar: 84.75 },
    { Q: 48, s: 1.1904, laminar: 80.65 },
    { Q: 60, s: 1.56, laminar: 76.92 },
  ];
  const result = byMethod(ends(exact.map(({ Q, s }) => [Q, s])), 'hantushBierschenk');

  it('gives B and C again', () => {
    expect(off(valueOf(result, 'aquiferLoss'), 0.02)).toBeLessThan(1e-6);
    expect(off(valueOf(result, 'wellLoss'), 1e-4)).toBeLessThan(1e-6);
    expect(estimateOf(result, 'wellLoss').unit).toBe('d²/m⁵');
  });

  it.each(exact)('has $laminar % of linear loss at $Q m³/d', ({ Q, laminar }) => {
    const line = lossLine(exact.map((one) => ({ minutes: 60, rateM3d: one.Q, drawdownM: one.s })))!;
    expect(laminarShare(line, Q).value).toBeCloseTo(laminar, 2);
  });

  it('has the share of its highest rate among its results', () => {
    expect(valueOf(result, 'laminarShare')).toBeCloseTo(76.92, 2);
  });

  it('has its specific capacity at the end', () => {
    const capacity = byMethod(ends(exact.map(({ Q, s }) => [Q, s])), 'specificCapacity');
    expect(valueOf(capacity, 'specificCapacity')).toBeCloseTo(60 / 24 / 1.56, 6);
  });
});

describe('a step test that is not as it should be', () => {
  it('has no interval from two steps, and says so', () => {
    const result = byMethod(
      ends([
        [24, 0.5],
        [48, 1.2],
      ]),
      'hantushBierschenk',
    );
    expect(estimateOf(result, 'wellLoss')).not.toHaveProperty('interval');
    expect(result!.checks).toContainEqual({
      code: 'stepsEnough',
      holds: false,
      values: { steps: 2, limit: 3 },
    });
  });

  it('says where the loss comes out below nil', () => {
    const result = byMethod(
      ends([
        [24, 0.6],
        [36, 0.85],
        [48, 1.05],
      ]),
      'hantushBierschenk',
    );
    expect(valueOf(result, 'wellLoss')).toBeLessThan(0);
    expect(result!.checks.find(({ code }) => code === 'lossPositive')!.holds).toBe(false);
  });

  it('says where the rates lie too near each other', () => {
    const result = byMethod(
      ends([
        [24, 0.5],
        [27, 0.57],
        [30, 0.65],
      ]),
      'hantushBierschenk',
    );
    expect(result!.checks.find(({ code }) => code === 'stepsRise')!.holds).toBe(false);
  });
});
