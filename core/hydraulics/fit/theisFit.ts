import type { Metres } from '../../base/units.ts';
import { impulsesOf, type Impulse } from '../ratesOverTime.ts';
import type { Curve, M2PerDay, Minutes, RateChange } from '../results.ts';
import { wellFunction } from '../special/wellFunction.ts';
import { minutesPerDay } from '../transmissivity.ts';
import { fitColumns, halfWidth } from './leastSquares.ts';

/** A drawdown at a time after pumping began. */
export interface TimedDrawdown {
  readonly minutes: Minutes;
  readonly drawdownM: Metres;
  /** From the pumped well; only ratios matter, and 1 serves where it is not known. */
  readonly distanceM: Metres;
}

export interface TheisFit {
  readonly transmissivityM2d: M2PerDay;
  /** S/4T in days a square metre; with the true distances S follows, else nothing does. */
  readonly storageTerm: number;
  readonly storage: number;
  readonly rmsM: Metres;
  readonly fittedM: readonly Metres[];
  /** Half-widths of the 95 % intervals of ln T and ln S, linearised at the best fit. */
  readonly lnTHalf?: number;
  readonly lnSHalf?: number;
}

/** Range and step of the first search over ln(term / longest time); the second narrows it. */
const search = { from: -60, to: 3, step: 0.5, nearEnough: 1e-9 };
/** So many readings, evenly picked, are enough to tell near which term the best fit lies. */
const mostOnGrid = 500;
const golden = (Math.sqrt(5) - 1) / 2;

function sumOver(
  impulses: readonly Impulse[],
  minutes: Minutes,
  termD: number,
  of: (u: number) => number,
): number {
  return impulses
    .filter(({ fromMin }) => fromMin < minutes)
    .reduce(
      (sum, { fromMin, byM3d }) => sum + byM3d * of((termD * minutesPerDay) / (minutes - fromMin)),
      0,
    );
}

/** Drawdown by a fitted curve at a time after pumping began. */
export function curveAt(
  { transmissivityM2d, termD }: Curve,
  rates: readonly RateChange[],
  minutes: Minutes,
): Metres {
  const sum = sumOver(impulsesOf(rates), minutes, termD, wellFunction);
  return sum / (4 * Math.PI * transmissivityM2d);
}

/** Shape of the drawdowns for a storage term, and the factor 1/4πT that fits it best. */
function bestFor(lnTerm: number, readings: readonly TimedDrawdown[], impulses: readonly Impulse[]) {
  const term = Math.exp(lnTerm);
  const shape = readings.map(({ minutes, distanceM }) =>
    sumOver(impulses, minutes, term * distanceM ** 2, wellFunction),
  );
  const square = shape.reduce((sum, one) => sum + one * one, 0);
  const product = shape.reduce((sum, one, at) => sum + one * readings[at]!.drawdownM, 0);
  const factor = product / square;
  const fittedM = shape.map((one) => one * factor);
  const sumOfSquares = fittedM.reduce(
    (sum, one, at) => sum + (one - readings[at]!.drawdownM) ** 2,
    0,
  );
  return { lnTerm, factor, fittedM, sumOfSquares };
}

type Best = ReturnType<typeof bestFor>;

/** The lowest point between two ends by the golden section. */
function narrow(low: number, high: number, at: (lnTerm: number) => Best): Best {
  let [a, b] = [low, high];
  let left = at(b - golden * (b - a));
  let right = at(a + golden * (b - a));
  while (b - a > search.nearEnough) {
    if (left.sumOfSquares <= right.sumOfSquares) {
      b = right.lnTerm;
      right = left;
      left = at(b - golden * (b - a));
    } else {
      a = left.lnTerm;
      left = right;
      right = at(a + golden * (b - a));
    }
  }
  return left.sumOfSquares <= right.sumOfSquares ? left : right;
}

/** The term of the grid that fits some readings best; undefined at the ends of the range. */
function lowestOnGrid(middle: number, at: (lnTerm: number) => Best): number | undefined {
  const grid: Best[] = [];
  for (let step = search.from; step <= search.to; step += search.step) grid.push(at(middle + step));
  const usable = grid.filter(({ sumOfSquares }) => Number.isFinite(sumOfSquares));
  if (usable.length === 0) return undefined;
  const lowest = usable.reduce((best, one) => (one.sumOfSquares < best.sumOfSquares ? one : best));
  return lowest === usable[0] || lowest === usable.at(-1) ? undefined : lowest.lnTerm;
}

/**
 * The best fit to all readings. Of a logger's thousands a part, evenly picked, tells where to look;
 * where the best then lies at the edge of that place, all are asked.
 */
function bestOverall(
  middle: number,
  readings: readonly TimedDrawdown[],
  impulses: readonly Impulse[],
): Best | undefined {
  const every = Math.ceil(readings.length / mostOnGrid);
  const some = readings.filter((_, at) => at % every === 0);
  const { step } = search;
  const at = (lnTerm: number) => bestFor(lnTerm, readings, impulses);
  const near = lowestOnGrid(middle, (lnTerm) => bestFor(lnTerm, some, impulses));
  const first = near === undefined ? undefined : narrow(near - step, near + step, at);
  if (every === 1 || (first && Math.abs(first.lnTerm - near!) < 0.98 * step)) return first;
  const sure = lowestOnGrid(middle, at);
  return sure === undefined ? undefined : narrow(sure - step, sure + step, at);
}

/** Half-widths from ∂s/∂ln T and ∂s/∂ln S, since dW/du = −e⁻ᵘ/u. */
function halfWidths(best: Best, readings: readonly TimedDrawdown[], impulses: readonly Impulse[]) {
  const term = Math.exp(best.lnTerm);
  const byStorage = readings.map(
    ({ minutes, distanceM }) =>
      -best.factor * sumOver(impulses, minutes, term * distanceM ** 2, (u) => Math.exp(-u)),
  );
  const byT = best.fittedM.map((one, at) => -one - byStorage[at]!);
  const residuals = best.fittedM.map((one, at) => readings[at]!.drawdownM - one);
  const fit = fitColumns([byT, byStorage], residuals);
  const lnTHalf = fit && halfWidth(fit, [1, 0]);
  const lnSHalf = fit && halfWidth(fit, [0, 1]);
  return lnTHalf === undefined || lnSHalf === undefined ? {} : { lnTHalf, lnSHalf };
}

/**
 * Fits T and S to drawdowns by non-linear least squares on Σ ΔQ W(u)/4πT, u = r² S / 4 T (t − tᵢ).
 * For each storage term the best T is linear, so that the search has one dimension: a grid, then
 * the golden section. Undefined where the best lies at the end of the range or no drawdown rises.
 * Source: Theis 1935.
 */
export function fitTheis(
  readings: readonly TimedDrawdown[],
  rates: readonly RateChange[],
): TheisFit | undefined {
  if (readings.length < 3) return undefined;
  const impulses = impulsesOf(rates);
  const longest = Math.log(Math.max(...readings.map(({ minutes }) => minutes)) / minutesPerDay);
  const least = 2 * Math.log(Math.min(...readings.map(({ distanceM }) => distanceM)));
  const best = bestOverall(longest - least, readings, impulses);
  if (!best || !(best.factor > 0)) return undefined;
  const transmissivityM2d = 1 / (4 * Math.PI * best.factor);
  const storageTerm = Math.exp(best.lnTerm);
  return {
    transmissivityM2d,
    storageTerm,
    storage: 4 * transmissivityM2d * storageTerm,
    rmsM: Math.sqrt(best.sumOfSquares / readings.length),
    fittedM: best.fittedM,
    ...halfWidths(best, readings, impulses),
  };
}
