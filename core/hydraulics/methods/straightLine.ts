import { lineAt, slopeHalfWidth, type LineFit } from '../fit/line.ts';
import { halfWidth } from '../fit/leastSquares.ts';
import { limits } from '../limits.ts';
import { impulsesOf, stoppedAt, superposedLog } from '../ratesOverTime.ts';
import type { AssumptionCode } from '../codes.ts';
import type { Check, Estimate, FittedPoint, MethodResult, Said } from '../results.ts';
import type { Drawdowns, Setting } from '../setting.ts';
import { intervalLevel } from '../special/studentT.ts';
import {
  around,
  minutesPerDay,
  transmissivityInterval,
  transmissivityM2d,
} from '../transmissivity.ts';
import {
  checksOf,
  chooseReadings,
  lineAssumptions,
  usedOf,
  type Chosen,
  type OnAxis,
} from './chooseReadings.ts';
import { assumed, check } from './said.ts';

/** A straight line through readings, with what later steps need of it. */
export interface StraightLine extends Chosen {
  readonly on: OnAxis;
}

/**
 * Drawdowns of pumping on superposed log time, brought to the last rate: s Q/Qᵢ against
 * Σ ΔQ log₁₀(t − tᵢ) / Qᵢ. With one rate it is s against log₁₀ t.
 */
export function pumpingAxis({ readings, rates }: Drawdowns): OnAxis | undefined {
  const last = rates.at(-1);
  if (!last) return undefined;
  const impulses = impulsesOf(rates);
  const used = readings.filter(({ rateM3d = 0 }) => rateM3d > 0);
  return {
    readings: used,
    rateM3d: last.rateM3d,
    x: used.map(({ minutes, rateM3d }) => superposedLog(impulses, minutes) / rateM3d!),
    y: used.map(({ drawdownM, rateM3d }) => (drawdownM * last.rateM3d) / rateM3d!),
  };
}

/** Residual drawdowns on log₁₀(t/t′), superposed over all rates before the stop. */
export function recoveryAxis({ readings, rates, pumpedMin }: Drawdowns): OnAxis | undefined {
  const last = rates.at(-1);
  if (!last || pumpedMin === undefined) return undefined;
  const impulses = impulsesOf(stoppedAt(rates, pumpedMin));
  return {
    readings,
    rateM3d: last.rateM3d,
    x: readings.map(({ minutes }) => superposedLog(impulses, pumpedMin + minutes) / last.rateM3d),
    y: readings.map(({ drawdownM }) => drawdownM),
  };
}

/** The line through the readings of an axis; undefined where too few lie on it or none rise. */
export function drawLine(on: OnAxis | undefined, setting: Setting): StraightLine | undefined {
  const chosen = on && chooseReadings(on, setting);
  return chosen && chosen.stretch.line.slope > 0 ? { ...chosen, on } : undefined;
}

function pointsOf({ on, stretch: { first, last, line } }: StraightLine): FittedPoint[] {
  return on.readings.slice(first, last + 1).map(({ minutes }, at) => {
    const x = on.x[first + at]!;
    return { minutes, x, read: on.y[first + at]!, fitted: lineAt(line, x) };
  });
}

/** S = 2.2458 T t₀ / r², t₀ where the line has no drawdown; its interval about ln S, linearised. */
function storageOf({ on, stretch: { line } }: StraightLine, distanceM: number): Estimate {
  const { slope, at0, fit } = line;
  const T = transmissivityM2d(on.rateM3d, slope);
  const value = (2.2458 * T * 10 ** (-at0 / slope)) / minutesPerDay / distanceM ** 2;
  const half = halfWidth(fit, [-Math.LN10 / slope, (Math.LN10 * at0) / slope ** 2 - 1 / slope]);
  const ends = half !== undefined && {
    interval: {
      lowest: value * Math.exp(-half),
      highest: value * Math.exp(half),
      level: intervalLevel,
      basis: 'linearised' as const,
    },
  };
  return { id: 'storage', value, unit: '1', ...(ends || {}) };
}

function estimatesOf({ on, stretch: { line } }: StraightLine): Estimate[] {
  const half = slopeHalfWidth(line);
  return [
    {
      id: 'transmissivity',
      value: transmissivityM2d(on.rateM3d, line.slope),
      unit: 'm²/d',
      ...transmissivityInterval(on.rateM3d, line.slope, half),
    },
    { id: 'slope', value: line.slope, unit: 'm', ...around(line.slope, half) },
  ];
}

function shared(drawn: StraightLine, setting: Setting) {
  const { slope, at0, r2, rms }: LineFit = drawn.stretch.line;
  return {
    used: usedOf(drawn.on, drawn),
    points: pointsOf(drawn),
    rmsM: rms,
    line: { slope, at0, ...(r2 === undefined ? {} : { r2 }) },
    checks: checksOf(drawn.on, drawn.stretch, setting),
    assumptions: lineAssumptions(drawn, setting),
  };
}

/**
 * Cooper and Jacob: T from the slope of drawdown over log time; S in observation wells alone, since
 * the radius that acts in a pumped well is not known.
 */
export function cooperJacob(
  data: Drawdowns,
  setting: Setting,
  also: readonly Said<AssumptionCode>[] = [],
): MethodResult | undefined {
  const drawn = drawLine(pumpingAxis(data), setting);
  if (!drawn) return undefined;
  const { assumptions, ...rest } = shared(drawn, setting);
  const { distanceM } = setting;
  return {
    method: 'cooperJacob',
    ...rest,
    estimates: [
      ...estimatesOf(drawn),
      ...(distanceM === undefined ? [] : [storageOf(drawn, distanceM)]),
    ],
    source: data.rates.length > 1 ? 'birsoySummers1980' : 'cooperJacob1946',
    assumptions: [
      ...assumptions,
      ...(distanceM === undefined ? [assumed('storageNotReported')] : []),
      ...(data.rates.length > 1 ? [assumed('wellLossIgnored')] : []),
      ...also,
    ],
  };
}

/** Where the line of an ideal recovery ends: at rest when t/t′ is 1. */
function restCheck({ slope, at0 }: LineFit): Check {
  const limit = limits.restShare * slope;
  return check('recoveryToRest', Math.abs(at0) <= limit, { atZero: at0, limit });
}

/** Theis's recovery: T from the slope of the residual drawdown over log t/t′. */
export function theisRecovery(
  data: Drawdowns,
  setting: Setting,
  also: readonly Said<AssumptionCode>[] = [],
): MethodResult | undefined {
  const drawn = drawLine(recoveryAxis(data), setting);
  if (!drawn) return undefined;
  const { assumptions, checks, ...rest } = shared(drawn, setting);
  return {
    method: 'theisRecovery',
    ...rest,
    estimates: estimatesOf(drawn),
    checks: [...checks, restCheck(drawn.stretch.line)],
    source: data.rates.length > 1 ? 'birsoySummers1980' : 'theis1935',
    assumptions: [...assumptions, ...also],
  };
}
