import { slopeHalfWidth } from './fit/line.ts';
import { stretchOf, type AxisReadings, type Stretch } from './fit/straightPart.ts';
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
function breakIn(on: AxisReadings, first: number): Broken | undefined {
  const last = on.x.length - 1;
  let best: (Broken & { sum: number }) | undefined;
  for (let at = first + leastReadings - 1; at <= last - leastReadings + 1; at++) {
    const early = stretchOf(on, first, at);
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

function codeOf(ratio: number): Hint['code'] | undefined {
  if (ratio >= limits.doublingLeast && ratio <= limits.doublingMost) return 'slopeDoubling';
  if (ratio >= limits.steeper) return 'slopeSteeper';
  return ratio <= limits.flatter ? 'flattening' : undefined;
}

function stabilised(on: OnAxis, first: number): Hint[] {
  const whole = stretchOf(on, first, on.x.length - 1);
  if (!whole || !whole.straight || whole.cycles < 1 || !(whole.line.slope > 0)) return [];
  return [
    {
      code: 'stabilised',
      values: { cycles: whole.cycles },
      fromMin: on.readings[first]!.minutes,
      toMin: on.readings.at(-1)!.minutes,
    },
  ];
}

/**
 * What the shape of a drawdown hints at, after the casing's storage: the readings as two straight
 * branches, where their slopes differ by more than their intervals; or one branch to the end.
 * Hints alone: skin, rates and rest levels make the same shapes.
 */
export function hintsOf(on: OnAxis, casingStorageMin: Minutes | undefined): Hint[] {
  const first = on.readings.findIndex(({ minutes }) => minutes >= (casingStorageMin ?? 0));
  if (first < 0) return [];
  const broken = breakIn(on, first);
  const ratio = broken && broken.late.line.slope / broken.early.line.slope;
  const code = ratio !== undefined && differ(broken!) ? codeOf(ratio) : undefined;
  if (!code) return stabilised(on, first);
  return [
    {
      code,
      values: { ratio: ratio! },
      fromMin: on.readings[broken!.late.first]!.minutes,
      toMin: on.readings.at(-1)!.minutes,
    },
  ];
}
