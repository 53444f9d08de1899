import type { RecordPath } from '../../../base/recordPath.ts';
import type { PlacedSurrounding } from '../../../water/results.ts';

/** Where a surrounding is shown, right and down of the well in the unit of `edge`. */
export interface PlanMark {
  readonly path: RecordPath;
  readonly number: number;
  readonly x: number;
  readonly y: number;
  /** It stands farther than the plan reaches and is shown a little beyond its edge. */
  readonly beyond: boolean;
  /** Degrees clockwise from north. */
  readonly turn: number;
}

/** As the table of the record counts its rows, from 1. */
export function numberOf(path: RecordPath): number {
  return Number(/\[(\d+)\]/.exec(path)?.[1]) + 1;
}

/**
 * Marks of what stands round a well in the middle, north up; `edge` is the paper or screen length
 * of `reachM`, and `over` how far past it what is farther stands.
 */
export function planMarks(
  placed: readonly PlacedSurrounding[],
  reachM: number,
  edge: number,
  over: number,
): PlanMark[] {
  return placed.map(({ path, distanceM, eastM, northM, directionDegrees }) => {
    const beyond = distanceM > reachM;
    const unit = beyond ? (edge + over) / distanceM : edge / reachM;
    return {
      path,
      number: numberOf(path),
      x: eastM * unit,
      y: -northM * unit,
      beyond,
      turn: directionDegrees,
    };
  });
}
