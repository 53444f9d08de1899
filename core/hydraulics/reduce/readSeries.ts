import { known } from '../../base/known.ts';
import { writePath, type RecordPath } from '../../base/recordPath.ts';
import type { Metres } from '../../base/units.ts';
import type { PumpingTest } from '../../record/water.ts';
import type { LeftOut, Minutes } from '../results.ts';

/** A row of a test's series that can be gone by. */
export interface SeriesReading {
  readonly path: RecordPath;
  /** As written: since the step began, or since the start. */
  readonly minutes: Minutes;
  readonly readM: Metres;
  readonly rateM3h?: number;
  readonly step?: number;
}

export interface Series {
  readonly rows: readonly SeriesReading[];
  readonly leftOut: readonly LeftOut[];
}

const isNumber = (value: number | undefined): value is number => Number.isFinite(value);

/** The rows of a test that have a time and a level, in the order in which they stand. */
export function readSeries({ series = [] }: PumpingTest, index: number): Series {
  const rows: SeriesReading[] = [];
  const leftOut: LeftOut[] = [];
  series.forEach(({ minutes, reading, rate, step }, at) => {
    const path = writePath(['tests', index, 'series', at]);
    if (!isNumber(minutes)) leftOut.push({ path, why: 'noMinutes' });
    else if (!isNumber(reading)) leftOut.push({ path, why: 'noReading', minutes });
    else rows.push({ path, minutes, readM: reading, ...known({ rateM3h: rate, step }) });
  });
  return { rows, leftOut };
}

/** Where in a list, of which a first part fails and the rest passes, the rest begins. */
function placeIn(list: readonly number[], passes: (one: number) => boolean): number {
  let [from, to] = [0, list.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (passes(list[middle]!)) to = middle;
    else from = middle + 1;
  }
  return from;
}

/**
 * Splits rows into the most that rise in time and those that break the order, as one slip of the
 * pen in the minutes does.
 */
export function inOrderOfTime<Row extends { readonly minutes: Minutes }>(
  rows: readonly Row[],
): { readonly rising: Row[]; readonly broken: Row[] } {
  // Ends of the rising sequences found so far, by their length; each knows the row before it.
  const ends: number[] = [];
  const before: (number | undefined)[] = [];
  rows.forEach(({ minutes }, at) => {
    const length = placeIn(ends, (end) => rows[end]!.minutes >= minutes);
    before[at] = ends[length - 1];
    ends[length] = at;
  });
  const kept = new Set<number>();
  for (let at = ends.at(-1); at !== undefined; at = before[at]) kept.add(at);
  return {
    rising: rows.filter((_, at) => kept.has(at)),
    broken: rows.filter((_, at) => !kept.has(at)),
  };
}
