import { limits } from '../limits.ts';
import { fitColumns, halfWidth } from './leastSquares.ts';
import { fitLine, type LineFit } from './line.ts';

/** Readings in order of time over the axis on which they should lie straight. */
export interface AxisReadings {
  /** In log cycles, rising or falling throughout. */
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** A stretch of the readings by index, the last one included. */
export interface Stretch {
  readonly first: number;
  readonly last: number;
  readonly line: LineFit;
  readonly cycles: number;
  /** How much the slope changes from end to end, as a share of the slope. */
  readonly slopeChange: number;
  /** Whether it is straight by the limit or as far as the scatter lets see. */
  readonly straight: boolean;
}

/** Windows begin and end at no more than so many readings, evenly apart in log time. */
const mostBorders = 40;
/** As good as the longest; of those the latest is taken. */
const nearlyLongest = 0.95;

const part = (list: readonly number[], first: number, last: number) => list.slice(first, last + 1);

/** The bend of a parabola through the stretch, over its length, and whether the scatter hides it. */
function bend(x: readonly number[], y: readonly number[], slope: number) {
  const middle = (x[0]! + x.at(-1)!) / 2;
  const span = Math.abs(x.at(-1)! - x[0]!);
  const off = x.map((one) => one - middle);
  const fit = fitColumns([x.map(() => 1), off, off.map((one) => one * one)], y);
  if (!fit) return { change: 0, hidden: true };
  const curvature = fit.coefficients[2]!;
  const half = halfWidth(fit, [0, 0, 1]) ?? Infinity;
  return { change: Math.abs((2 * curvature * span) / slope), hidden: Math.abs(curvature) <= half };
}

/** The line through a stretch; undefined where none can be drawn. */
export function stretchOf(
  { x, y }: AxisReadings,
  first: number,
  last: number,
): Stretch | undefined {
  const [xs, ys] = [part(x, first, last), part(y, first, last)];
  const line = fitLine(xs, ys);
  if (!line) return undefined;
  const { change, hidden } = bend(xs, ys, line.slope);
  const cycles = Math.abs(xs.at(-1)! - xs[0]!);
  const straight = hidden || change <= limits.slopeChange;
  return { first, last, line, cycles, slopeChange: change, straight };
}

/** Readings at which windows may begin and end. */
export function bordersOf(x: readonly number[]): number[] {
  if (x.length <= mostBorders) return x.map((_, at) => at);
  const step = Math.abs(x.at(-1)! - x[0]!) / (mostBorders - 1);
  const wanted = Array.from({ length: mostBorders }, (_, at) => at * step);
  const near = wanted.map((span) => x.findIndex((one) => Math.abs(one - x[0]!) >= span - 1e-9));
  return [...new Set([...near.filter((at) => at >= 0), x.length - 1])];
}

/** What a stretch has to meet besides being long and straight. */
export type Allows = (stretch: Stretch) => boolean;

/** All pairs of borders that are far enough apart, the longest first. */
function windowsOf({ x }: AxisReadings) {
  const at = bordersOf(x);
  return at
    .flatMap((first) =>
      at
        .filter((last) => last - first + 1 >= limits.readings)
        .map((last) => ({ first, last, cycles: Math.abs(x[last]! - x[first]!) })),
    )
    .filter(({ cycles }) => cycles >= limits.cycles)
    .sort((a, b) => b.cycles - a.cycles);
}

/** The longest stretches that meet all; shorter ones are not looked at once one was found. */
function admissible(readings: AxisReadings, allows: Allows): Stretch[] {
  const found: Stretch[] = [];
  for (const { first, last, cycles } of windowsOf(readings)) {
    if (found[0] && cycles < nearlyLongest * found[0].cycles) break;
    const stretch = stretchOf(readings, first, last);
    if (stretch && stretch.line.slope > 0 && stretch.straight && allows(stretch))
      found.push(stretch);
  }
  return found;
}

/** The later one, and of those that end together the longer one. */
function isBetter(one: Stretch, other: Stretch): boolean {
  return one.last > other.last || (one.last === other.last && one.first < other.first);
}

/**
 * The straight part of a test, chosen by the objective: of all stretches with at least 5 readings
 * and half a log cycle that rise, meet what the method asks for, and whose slope changes by no
 * more than a tenth from end to end (or by less than their scatter lets see), the longest in log
 * cycles; of those nearly as long, the one that ends latest. Undefined where there is none.
 */
export function chooseStraightPart(readings: AxisReadings, allows: Allows): Stretch | undefined {
  return admissible(readings, allows).reduce<Stretch | undefined>(
    (best, one) => (!best || isBetter(one, best) ? one : best),
    undefined,
  );
}

/** The last readings over half a log cycle, or all where they are fewer than the least. */
export function lastPart(readings: AxisReadings): Stretch | undefined {
  const { x } = readings;
  const last = x.length - 1;
  const far = x.findLastIndex((one) => Math.abs(one - x[last]!) >= limits.cycles);
  return stretchOf(readings, Math.max(0, Math.min(far, x.length - limits.readings)), last);
}
