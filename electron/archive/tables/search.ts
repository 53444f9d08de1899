import type { ReadHandle, WriteHandle } from '../handles.ts';
import { kept } from '../kept.ts';

/** Replaces what a well is found by, plain words parted by blanks, by which way of reading them. */
export function putWords(db: WriteHandle, seq: number, words: string, wordedBy: number): void {
  kept<[number]>(db, 'DELETE FROM well_search WHERE rowid = ?').run(seq);
  kept<[number, string]>(db, 'INSERT INTO well_search (rowid, words) VALUES (?, ?)').run(
    seq,
    words,
  );
  kept<[number, number]>(db, 'UPDATE well SET worded_by = ? WHERE seq = ?').run(wordedBy, seq);
}

/** A well by its place in the file and by its id. */
export interface PlacedId {
  readonly seq: number;
  readonly id: string;
}

/** Wells whose words were read from their records in another way, first to last. */
export function listOutworded(db: ReadHandle, wordedBy: number): PlacedId[] {
  const from = 'SELECT seq, id FROM well WHERE worded_by';
  return db
    .prepare<[number, number], PlacedId>(`${from} < ? UNION ALL ${from} > ? ORDER BY seq`)
    .all(wordedBy, wordedBy);
}
