import type { ReadHandle } from '../handles.ts';

/** How far a well is: two marks that are alike stand for the same work. */
export interface WellMark {
  readonly id: string;
  readonly revision: number;
  /** Number of the newest edit; 0 where there was none. */
  readonly edit: number;
  /** Something was typed that is in no revision yet. */
  readonly unrevised: boolean;
  readonly changedAt: string;
}

interface Row {
  readonly id: string;
  readonly revision: number;
  readonly edit: number;
  readonly unrevised: 0 | 1;
  readonly changed_at: string;
}

const marks = `
  SELECT id, revision, ifnull(edit, 0) AS edit, ifnull(unrevised, 0) AS unrevised, well.changed_at
  FROM well LEFT JOIN working ON well_id = id`;

function markOf({ changed_at, unrevised, ...row }: Row): WellMark {
  return { ...row, unrevised: unrevised === 1, changedAt: changed_at };
}

export function listMarks(db: ReadHandle): WellMark[] {
  return db.prepare<[], Row>(marks).all().map(markOf);
}

export function findMark(db: ReadHandle, id: string): WellMark | undefined {
  const row = db.prepare<[string], Row>(`${marks} WHERE id = ?`).get(id);
  return row && markOf(row);
}
