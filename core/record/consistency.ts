import { checkDates } from './checks/dates.ts';
import { checkFills } from './checks/annulus.ts';
import { checkPieces } from './checks/pieces.ts';
import { checkDepths } from './checks/ranges.ts';
import { checkSeries } from './checks/series.ts';
import { placeInDocument } from './prune.ts';
import type { ReadRecord } from './read.ts';
import type { WellRecord } from './schema.ts';
import type { Trouble } from './trouble.ts';

/**
 * Where a record contradicts itself field against field. What its geometry says (gaps, overlaps,
 * parts that do not fit each other) is for the model to find.
 */
export function checkConsistency(record: WellRecord): Trouble[] {
  return [checkDepths, checkDates, checkFills, checkPieces, checkSeries].flatMap((check) =>
    check(record),
  );
}

const paths = /[a-z]\w*(\[\d+\])?(\.[a-z]\w*(\[\d+\])?)*/gi;

/** All that is wrong with a document that was read, in the document's own paths. */
export function troublesOf({ record, troubles, places }: ReadRecord): Trouble[] {
  const inDocument = ({ path, sentence }: Trouble): Trouble => ({
    path: placeInDocument(places, path),
    sentence: sentence.replace(paths, (one) => placeInDocument(places, one)),
  });
  return [...troubles, ...checkConsistency(record).map(inDocument)];
}
