import type { WriteHandle } from './handles.ts';
import { newestDocument } from './tables/newest.ts';
import { listOutworded, putWords } from './tables/search.ts';
import { sightOf } from './tables/sights.ts';
import { findWell, listed, listOutdated, putWell, type WrittenWell } from './tables/wells.ts';
import { wordsOf } from './words.ts';
import type { ArchiveWorld } from './world.ts';

/** Rises when lines are read from records in another way than before. */
const listing = 2;
/** Rises when words are read from records in another way than before. */
const wording = 1;
/** Wells whose words are written anew in one transaction: what a stop on the way costs. */
const eachTime = 1000;

/** Writes what a well is listed, sorted and found by, from its record in any condition. */
export function putLine(
  db: WriteHandle,
  record: unknown,
  known: Pick<WrittenWell, 'id' | 'revision' | 'changedAt'>,
): void {
  const seq = putWell(db, listed(record, known), sightOf(record), listing);
  putWords(db, seq, wordsOf(record), wording);
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

/** Writes anew the words that were read in another way; after a stop it goes on where it was. */
export function bringWordsUpToDate(
  db: WriteHandle,
  { onBringing = () => undefined }: Pick<ArchiveWorld, 'onBringing'>,
): void {
  const wells = listOutworded(db, wording);
  for (let from = 0; from < wells.length; from += eachTime) {
    onBringing(from, wells.length);
    db.transaction(() => {
      for (const { seq, id } of wells.slice(from, from + eachTime))
        putWords(db, seq, wordsOf(newestDocument(db, id)), wording);
    }).immediate();
  }
}
