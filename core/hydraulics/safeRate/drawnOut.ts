import type { AcrossMethods } from '../acrossMethods.ts';
import { transmissivityM2d } from '../transmissivity.ts';

/** A value with the ends of its interval; they are the value itself where nothing tells of any. */
export interface Told {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export function told(value: number, half = 0): Told {
  return { value, low: value - half, high: value + half };
}

/** What a line's height and slope make of a drawdown that lies beyond its readings. */
export interface Reach {
  /** Log minutes up to which the readings reach, and beyond which the slope carries on. */
  readonly from: number;
  readonly to: number;
  /** For each m³/d: the line at `from` with its half-width, and the slope over a cycle. */
  readonly height: number;
  readonly half: number | undefined;
  readonly slope: number;
}

/**
 * The drawdown at the end of the time. Its interval draws the line out by the flattest and the
 * steepest slope of all methods of all tests, since one test's scatter tells little of a year.
 */
export function drawnOut(
  { from, to, height, half = 0, slope }: Reach,
  across: AcrossMethods | undefined,
): Told {
  const { lowest, highest } = across?.interval ?? {};
  const steepest = lowest === undefined ? slope : transmissivityM2d(1, lowest);
  const flattest = highest === undefined ? 0 : transmissivityM2d(1, highest);
  const beyond = to - from;
  const [least, most] = [flattest * beyond, Math.max(slope, steepest) * beyond].sort(
    (a, b) => a - b,
  );
  const value = height + slope * beyond;
  return {
    value,
    low: Math.min(value, height - half + least!),
    high: Math.max(value, height + half + most!),
  };
}
