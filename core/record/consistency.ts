import { checkDates } from './checks/dates.ts';
import { checkFills } from './checks/annulus.ts';
import { checkPieces } from './checks/pieces.ts';
import { checkRanges } from './checks/ranges.ts';
import { checkSeries } from './checks/series.ts';
import { phrase } from './phrases/phrase.ts';
import { placeInDocument } from './prune.ts';
import type { ReadRecord } from './read.ts';
import type { WellRecord } from './schema.ts';
import { troubleAt, type Trouble } from './trouble.ts';

/**
 * Where a record contradicts itself in what the model does not look at: days, grains, slots and
 * rows of readings. Depths and pipes are the model's, which says each in a finding.
 */
export function checkBesideModel(record: WellRecord): Trouble[] {
  return [checkDates, checkFills, checkPieces, checkSeries].flatMap((check) => check(record));
}

/** All that a record contradicts itself in field against field, ranges of depth first. */
export function checkConsistency(record: WellRecord): Trouble[] {
  return [...checkRanges(record), ...checkBesideModel(record)];
}

/** A check names the field that it compares with as `other`. */
function inDocument(troubles: readonly Trouble[], { places }: ReadRecord): Trouble[] {
  return troubles.map(({ path, code, values }) => {
    const { other } = values;
    const there = typeof other === 'string' ? { other: placeInDocument(places, other) } : {};
    return troubleAt(placeInDocument(places, path), phrase(code, { ...values, ...there }));
  });
}

/** Where a document that was read contradicts itself, in the document's own paths. */
export function contradictionsOf(read: ReadRecord): Trouble[] {
  return inDocument(checkConsistency(read.record), read);
}

/** All that is wrong with a document that was read: what could not be, and what contradicts. */
export function troublesOf(read: ReadRecord): Trouble[] {
  return [...read.troubles, ...contradictionsOf(read)];
}

/** The same for readers who are shown the model's findings too, so that nothing is said twice. */
export function troublesBesideFindings(read: ReadRecord): Trouble[] {
  return [...read.troubles, ...inDocument(checkBesideModel(read.record), read)];
}
