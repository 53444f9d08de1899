import { halfWidth } from '../fit/leastSquares.ts';
import { fitLine, lineAt, type LineFit } from '../fit/line.ts';
import { limits } from '../limits.ts';
import type { AssumptionCode } from '../codes.ts';
import type {
  Check,
  Estimate,
  M3PerDay,
  MethodResult,
  Minutes,
  Said,
  TestReading,
} from '../results.ts';
import type { Drawdowns } from '../setting.ts';
import { intervalLevel } from '../special/studentT.ts';
import { around } from '../transmissivity.ts';
import type { StepsFit } from './edenHazel.ts';
import { assumed, check } from './said.ts';

/** The end of a step: its rate and what it drew down by itself. */
export interface StepEnd {
  readonly minutes: Minutes;
  readonly rateM3d: M3PerDay;
  readonly drawdownM: number;
}

export interface StepEnds {
  readonly ends: readonly StepEnd[];
  readonly assumptions: readonly Said<AssumptionCode>[];
}

function lastOfSteps(readings: readonly TestReading[]): TestReading[] {
  const numbers = [...new Set(readings.map(({ step }) => step?.number))];
  return numbers
    .filter((number) => number !== undefined)
    .map((number) => readings.findLast(({ step }) => step?.number === number)!);
}

/**
 * Drawdowns at the ends of steps as if each rate had been pumped for one step alone from rest. A
 * later step still carries the tails of those before it: with the slope A of all steps they come
 * off, A Σ ΔQ (log₁₀(t − tᵢ) − log₁₀ Δt), which is the sum of increments of Hantush reckoned
 * instead of drawn. With too few readings for A, the drawdowns are taken as read.
 */
export function stepEnds({ readings, rates }: Drawdowns, all: StepsFit | undefined): StepEnds {
  const last = lastOfSteps(readings);
  const lengths = last.map(({ step }) => step!.minutes);
  const least = Math.min(...lengths);
  const uneven = lengths.some((length) => length > 1.1 * least);
  const tail = ({ minutes }: TestReading) =>
    rates
      .filter(({ fromMin }) => fromMin < minutes)
      .map(({ fromMin, rateM3d }, at) => ({
        by: rateM3d - (at === 0 ? 0 : rates[at - 1]!.rateM3d),
        cycles: Math.log10(minutes - fromMin) - Math.log10(least),
      }))
      .reduce((sum, { by, cycles }) => sum + by * cycles, 0);
  return {
    ends: last.map((reading) => ({
      minutes: reading.minutes,
      rateM3d: reading.rateM3d!,
      drawdownM: reading.drawdownM - (all ? all.slopePerRate * tail(reading) : 0),
    })),
    assumptions: [
      all ? assumed('stepsFreedOfTails', { minutes: least }) : assumed('stepEndsAsRead'),
      ...(uneven && !all ? [assumed('unequalSteps')] : []),
    ],
  };
}

/** B/(B + C Q), with its interval by first order from the covariance of B and C. */
export function laminarShare({ at0: B, slope: C, fit }: LineFit, rateM3d: M3PerDay): Estimate {
  const whole = B + C * rateM3d;
  const value = B / whole;
  const half = halfWidth(fit, [(C * rateM3d) / whole ** 2, (-B * rateM3d) / whole ** 2]);
  const ends = half !== undefined && {
    interval: {
      lowest: Math.max(0, value - half) * 100,
      highest: Math.min(1, value + half) * 100,
      level: intervalLevel,
      basis: 'propagated' as const,
    },
  };
  return { id: 'laminarShare', value: value * 100, unit: '%', ...(ends || {}) };
}

function checksOf(ends: readonly StepEnd[], C: number): Check[] {
  const rates = ends.map(({ rateM3d }) => rateM3d);
  const [lowest, highest] = [Math.min(...rates), Math.max(...rates)];
  const apart = highest >= 1.5 * lowest;
  return [
    check('stepsEnough', ends.length >= limits.steps, { steps: ends.length, limit: limits.steps }),
    check('stepsRise', apart, { lowest: lowest / 24, highest: highest / 24 }),
    check('lossPositive', C >= 0, { value: C }),
  ];
}

/** The line s/Q = B + C Q through the ends of steps; undefined for fewer than two rates. */
export function lossLine(ends: readonly StepEnd[]): LineFit | undefined {
  return fitLine(
    ends.map(({ rateM3d }) => rateM3d),
    ends.map(({ rateM3d, drawdownM }) => drawdownM / rateM3d),
  );
}

/**
 * Losses of a step test: s/Q = B + C Q. The laminar share is that of the highest rate. Source:
 * Jacob 1947, Hantush 1964, Bierschenk 1963.
 */
export function hantushBierschenk(
  { ends, assumptions }: StepEnds,
  also: readonly Said<AssumptionCode>[],
): MethodResult | undefined {
  const line = lossLine(ends);
  if (!line) return undefined;
  const { at0: B, slope: C, fit, r2 } = line;
  const highest = Math.max(...ends.map(({ rateM3d }) => rateM3d));
  const residuals = ends.map(
    ({ rateM3d, drawdownM }) => drawdownM - rateM3d * lineAt(line, rateM3d),
  );
  return {
    method: 'hantushBierschenk',
    estimates: [
      { id: 'aquiferLoss', value: B, unit: 'd/m²', ...around(B, halfWidth(fit, [1, 0])) },
      { id: 'wellLoss', value: C, unit: 'd²/m⁵', ...around(C, halfWidth(fit, [0, 1])) },
      laminarShare(line, highest),
    ],
    used: {
      fromMin: ends[0]!.minutes,
      toMin: ends.at(-1)!.minutes,
      count: ends.length,
      chosen: 'stepEnds',
    },
    points: ends.map(({ minutes, rateM3d, drawdownM }) => ({
      minutes,
      x: rateM3d,
      read: drawdownM / rateM3d,
      fitted: lineAt(line, rateM3d),
    })),
    rmsM: Math.sqrt(residuals.reduce((sum, one) => sum + one * one, 0) / ends.length),
    line: { slope: C, at0: B, ...(r2 === undefined ? {} : { r2 }) },
    checks: checksOf(ends, C),
    source: 'hantushBierschenk',
    assumptions: [assumed('independentResiduals'), ...assumptions, ...also],
  };
}
