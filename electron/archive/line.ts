import type { WriteHandle } from './handles.ts';
import { newestDocument } from './tables/newest.ts';
import { putSearchText } from './tables/search.ts';
import { sightOf } from './tables/sights.ts';
import { findWell, listed, listOutdated, putWell, type WrittenWell } from './tables/wells.ts';
import { searchText } from './words.ts';

/** Rises when lines or words are read from records in another way than before. */
const listing = 2;

/** Writes what a well is listed, sorted and found by, from its record in any condition. */
export function putLine(
  db: WriteHandle,
  record: unknown,
  known: Pick<WrittenWell, 'id' | 'revision' | 'changedAt'>,
): void {
  const seq = putWell(db, listed(record, known), sightOf(record), listing);
  putSearchText(db, seq, searchText(record));
}

/** Writes anew the lines that were read in another way, all of them or none. */
export function bringLinesUpToDate(db: WriteHandle): void {
  db.transaction(() => {
    for (const id of listOutdated(db, listing)) {
      const { revision, changedAt } = findWell(db, id)!;
      putLine(db, newestDocument(db, id), { id, revision, changedAt });
    }
  }).immediate();
}
