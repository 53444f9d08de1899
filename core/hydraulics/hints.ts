import { slopeHalfWidth } from './fit/line.ts';
import {
  bordersOf,
  lastPart,
  stretchOf,
  type AxisReadings,
  type Stretch,
} from './fit/straightPart.ts';
import { limits } from './limits.ts';
import type { OnAxis } from './methods/chooseReadings.ts';
import type { Hint, Minutes } from './results.ts';

/** Fewest readings of a branch. */
const leastReadings = 5;

interface Broken {
  readonly early: Stretch;
  readonly late: Stretch;
}

const longEnough = ({ cycles }: Stretch) => cycles >= limits.cycles;

/** The two lines that the readings lie nearest to, one after the other. */
function breakIn(on: AxisReadings): Broken | undefined {
  const last = on.x.length - 1;
  let best: (Broken & { sum: number }) | undefined;
  for (let at = leastReadings - 1; at <= last - leastReadings + 1; at++) {
    const early = stretchOf(on, 0, at);
    const late = stretchOf(on, at, last);
    if (!early || !late || !longEnough(early) || !longEnough(late)) continue;
    const sum = early.line.fit.sumOfSquares + late.line.fit.sumOfSquares;
    if (!best || sum < best.sum) best = { early, late, sum };
  }
  return best;
}

/** Whether the intervals of both slopes leave a gap. */
function differ({ early, late }: Broken): boolean {
  const [a, b] = [slopeHalfWidth(early.line), slopeHalfWidth(late.line)];
  if (a === undefined || b === undefined) return false;
  return Math.abs(late.line.slope - early.line.slope) > a + b;
}

const reversed = ({ x, y }: AxisReadings): AxisReadings => ({
  x: x.toReversed(),
  y: y.toReversed(),
});

/**
 * The last half cycle's slope over that of the first, since a boundary bends the drawdown over a
 * cycle or two.
 */
function endsRatio({ x, y }: AxisReadings, { early, late }: Broken): number {
  const start = {
    x: x.slice(early.first, early.last + 1),
    y: y.slice(early.first, early.last + 1),
  };
  const end = { x: x.slice(late.first), y: y.slice(late.first) };
  const first = lastPart(reversed(start)) ?? early;
  return (lastPart(end) ?? late).line.slope / first.line.slope;
}

/** Readings evenly apart in log time; a logger's thousands would tell no more and take long. */
function thinned(on: OnAxis, first: number): OnAxis {
  const picked = bordersOf(on.x.slice(first)).map((at) => at + first);
  return {
    rateM3d: on.rateM3d,
    readings: picked.map((at) => on.readings[at]!),
    x: picked.map((at) => on.x[at]!),
    y: picked.map((at) => on.y[at]!),
  };
}

function codeOf(ratio: number): Hint['code'] | undefined {
  if (ratio >= limits.doublingLeast && ratio <= limits.doublingMost) return 'slopeDoubling';
  if (ratio >= limits.steeper) return 'slopeSteeper';
  return ratio <= limits.flatter ? 'flattening' : undefined;
}

function stabilised(on: OnAxis): Hint[] {
  const whole = stretchOf(on, 0, on.x.length - 1);
  if (!whole || !whole.straight || whole.cycles < 1 || !(whole.line.slope > 0)) return [];
  return [
    {
      code: 'stabilised',
      values: { cycles: whole.cycles },
      fromMin: on.readings[0]!.minutes,
      toMin: on.readings.at(-1)!.minutes,
    },
  ];
}

/**
 * What the shape of a drawdown hints at, after the casing's storage: the readings as two straight
 * branches, where their slopes differ by more than their intervals; or one branch to the end. The
 * ratio is that of the last half cycle to the first.
 * Hints alone: skin, rates and rest levels make the same shapes.
 */
export function hintsOf(whole: OnAxis, casingStorageMin: Minutes | undefined): Hint[] {
  const first = whole.readings.findIndex(({ minutes }) => minutes >= (casingStorageMin ?? 0));
  if (first < 0) return [];
  const on = thinned(whole, first);
  const broken = breakIn(on);
  const ratio = broken && endsRatio(on, broken);
  const code = ratio !== undefined && differ(broken!) ? codeOf(ratio) : undefined;
  if (!code) return stabilised(on);
  return [
    {
      code,
      values: { ratio: ratio! },
      fromMin: on.readings[broken!.late.first]!.minutes,
      toMin: on.readings.at(-1)!.minutes,
    },
  ];
}
