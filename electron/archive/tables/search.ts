import type { WriteHandle } from '../handles.ts';
import { kept } from '../kept.ts';
import type { SearchText } from '../words.ts';

/** Replaces what a well is found by. */
export function putSearchText(db: WriteHandle, seq: number, text: SearchText): void {
  kept<[number]>(db, 'DELETE FROM well_search WHERE rowid = ?').run(seq);
  kept<[SearchText & { seq: number }]>(
    db,
    `INSERT INTO well_search (rowid, number, name, places, people, remarks, log)
     VALUES (@seq, @number, @name, @places, @people, @remarks, @log)`,
  ).run({ ...text, seq });
}
