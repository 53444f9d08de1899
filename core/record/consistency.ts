import { checkDates } from './checks/dates.ts';
import { checkFills } from './checks/annulus.ts';
import { checkPieces } from './checks/pieces.ts';
import { checkSeries } from './checks/series.ts';
import { placeInDocument } from './prune.ts';
import type { ReadRecord } from './read.ts';
import type { WellRecord } from './schema.ts';
import type { Trouble } from './trouble.ts';

/**
 * Where a record contradicts itself in what the model does not look at: days, grains, slots and
 * rows of readings. Depths, ranges and pipes are the model's, which says each in a finding; what
 * it says is not said here again.
 */
export function checkConsistency(record: WellRecord): Trouble[] {
  return [checkDates, checkFills, checkPieces, checkSeries].flatMap((check) => check(record));
}

const paths = /[a-z]\w*(\[\d+\])?(\.[a-z]\w*(\[\d+\])?)*/gi;

/** Where a document that was read contradicts itself, in the document's own paths. */
export function contradictionsOf({ record, places }: ReadRecord): Trouble[] {
  const inDocument = ({ path, sentence }: Trouble): Trouble => ({
    path: placeInDocument(places, path),
    sentence: sentence.replace(paths, (one) => placeInDocument(places, one)),
  });
  return checkConsistency(record).map(inDocument);
}

/** All that is wrong with a document that was read: what could not be, and what contradicts. */
export function troublesOf(read: ReadRecord): Trouble[] {
  return [...read.troubles, ...contradictionsOf(read)];
}
