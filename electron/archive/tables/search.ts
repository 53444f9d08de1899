import type { WriteHandle } from '../handles.ts';
import type { SearchText } from '../words.ts';

/** Replaces what a well is found by. */
export function putSearchText(db: WriteHandle, seq: number, text: SearchText): void {
  db.prepare('DELETE FROM well_search WHERE rowid = ?').run(seq);
  db.prepare<[SearchText & { seq: number }]>(
    `INSERT INTO well_search (rowid, number, name, places, people, remarks)
     VALUES (@seq, @number, @name, @places, @people, @remarks)`,
  ).run({ ...text, seq });
}
