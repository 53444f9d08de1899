import type { ParameterId } from '../guidelines/guidelineSet.ts';
import type { Interval } from '../interval.ts';
import type { Reading } from '../results.ts';
import { inOrder, type ReadParameter } from './readReadings.ts';

/** The readings of one sample that tell a figure, by their parameters; of several the first. */
export interface SampleReadings {
  readonly sample: number;
  readonly readings: ReadonlyMap<ParameterId, Reading>;
}

/** The form that a parameter of the set is told in; undefined where it has none. */
export type FormIn = (id: ParameterId) => string | undefined;

/** Samples that have something to tell, the last in time first. */
export function lastFirst(read: readonly ReadParameter[]): SampleReadings[] {
  const order = inOrder(read.map(({ reading }) => reading)).map(({ sample }) => sample);
  return [...new Set(order.toReversed())].map((sample) => ({
    sample,
    readings: new Map(
      read
        .filter(({ reading }) => reading.sample === sample && reading.possible.length > 0)
        .toReversed()
        .map(({ parameter, reading }) => [parameter.id, reading]),
    ),
  }));
}

/** Between what a reading may be: nothing and its limit below detection, else its figure or forms. */
export function rangeOf({ possible, below }: Reading): Interval {
  const most = Math.max(...possible);
  return { least: below ? Math.min(0, most) : Math.min(...possible), most };
}
