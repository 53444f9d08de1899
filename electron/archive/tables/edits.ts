import type { Move } from '../../../core/record/desk.ts';
import type { ReadHandle, WriteHandle } from '../handles.ts';

/** A move over a well's desk, as it was told. */
export interface Edit extends Move {
  /** Rises by one from edit to edit of a well. */
  readonly number: number;
  readonly madeAt: string;
}

interface Row {
  readonly number: number;
  readonly kind: string;
  readonly patch: string;
  readonly made_at: string;
}

function rowOf({ number, kind, patch, madeAt }: Edit): Row {
  return { number, kind, patch: JSON.stringify(patch), made_at: madeAt };
}

function editOf({ number, kind, patch, made_at }: Row): Edit {
  return {
    number,
    kind: kind as Move['kind'],
    patch: JSON.parse(patch) as Move['patch'],
    madeAt: made_at,
  };
}

/** A well's edits since it was opened last, first to last. */
export function listEdits(db: ReadHandle, wellId: string): Edit[] {
  return db
    .prepare<[string], Row>(
      'SELECT number, kind, patch, made_at FROM edit WHERE well_id = ? ORDER BY number',
    )
    .all(wellId)
    .map(editOf);
}

export function putEdit(db: WriteHandle, wellId: string, edit: Edit): void {
  db.prepare<[Row & { well_id: string }]>(
    `INSERT INTO edit (well_id, number, kind, patch, made_at)
     VALUES (@well_id, @number, @kind, @patch, @made_at)`,
  ).run({ well_id: wellId, ...rowOf(edit) });
}

/** Forgets how a well's desk came about. */
export function dropEdits(db: WriteHandle, wellId: string): void {
  db.prepare<[string]>('DELETE FROM edit WHERE well_id = ?').run(wellId);
}
