import type { Desk } from '../../../core/record/desk.ts';
import type { ReadHandle, WriteHandle } from '../handles.ts';

/** A well's working copy. */
export interface Working {
  readonly wellId: string;
  /** The desk as it was opened last; absent where nothing was edited since. */
  readonly base?: Desk;
  /** The desk as it lies now. */
  readonly desk: Desk;
  /** Number of the newest edit. */
  readonly edit: number;
  /** The record holds what the newest revision does not. */
  readonly unrevised: boolean;
  readonly changedAt: string;
}

interface Row {
  readonly well_id: string;
  readonly base: string | null;
  readonly desk: string;
  readonly edit: number;
  readonly unrevised: 0 | 1;
  readonly changed_at: string;
}

function rowOf({ wellId, base, desk, edit, unrevised, changedAt }: Working): Row {
  return {
    well_id: wellId,
    base: base === undefined ? null : JSON.stringify(base),
    desk: JSON.stringify(desk),
    edit,
    unrevised: unrevised ? 1 : 0,
    changed_at: changedAt,
  };
}

function workingOf({ well_id, base, desk, edit, unrevised, changed_at }: Row): Working {
  return {
    wellId: well_id,
    ...(base === null ? {} : { base: JSON.parse(base) as Desk }),
    desk: JSON.parse(desk) as Desk,
    edit,
    unrevised: unrevised === 1,
    changedAt: changed_at,
  };
}

const columns = 'well_id, base, desk, edit, unrevised, changed_at';

export function findWorking(db: ReadHandle, wellId: string): Working | undefined {
  const row = db
    .prepare<[string], Row>(`SELECT ${columns} FROM working WHERE well_id = ?`)
    .get(wellId);
  return row && workingOf(row);
}

export function putWorking(db: WriteHandle, working: Working): void {
  db.prepare<[Row]>(
    `INSERT INTO working (${columns})
     VALUES (@well_id, @base, @desk, @edit, @unrevised, @changed_at)
     ON CONFLICT (well_id) DO UPDATE SET
       base = excluded.base, desk = excluded.desk, edit = excluded.edit,
       unrevised = excluded.unrevised, changed_at = excluded.changed_at`,
  ).run(rowOf(working));
}
