import type { ReadHandle, WriteHandle } from '../handles.ts';
import { kept } from '../kept.ts';

/** A record as it was saved once. */
export interface Revision {
  readonly wellId: string;
  /** From 1. */
  readonly number: number;
  /** JSON as it was given. */
  readonly record: string;
  readonly changedAt: string;
  readonly hash: string;
  /** Who made it, and why; empty where nobody said. */
  readonly author: string;
  readonly reason: string;
}

interface Row {
  readonly well_id: string;
  readonly number: number;
  readonly record: string;
  readonly changed_at: string;
  readonly hash: string;
  readonly author: string;
  readonly reason: string;
}

function rowOf({ wellId, changedAt, ...revision }: Revision): Row {
  return { ...revision, well_id: wellId, changed_at: changedAt };
}

function revisionOf({ well_id, changed_at, ...row }: Row): Revision {
  return { ...row, wellId: well_id, changedAt: changed_at };
}

const columns = 'well_id, number, record, changed_at, hash, author, reason';

export function findRevision(db: ReadHandle, wellId: string, number: number): Revision | undefined {
  const row = kept<[string, number], Row>(
    db,
    `SELECT ${columns} FROM revision WHERE well_id = ? AND number = ?`,
  ).get(wellId, number);
  return row && revisionOf(row);
}

/** Without their records, first to last. */
export function listRevisions(db: ReadHandle, wellId: string): Omit<Revision, 'record'>[] {
  return db
    .prepare<[string], Row>(
      `SELECT ${columns.replace('record', "'' AS record")} FROM revision
       WHERE well_id = ? ORDER BY number`,
    )
    .all(wellId)
    .map((row) => {
      const { wellId, number, changedAt, hash, author, reason } = revisionOf(row);
      return { wellId, number, changedAt, hash, author, reason };
    });
}

/** Every revision of every well, well by well, first to last; one at a time in memory. */
export function* everyRevision(db: ReadHandle): Generator<Revision> {
  const rows = db
    .prepare<[], Row>(`SELECT ${columns} FROM revision ORDER BY well_id, number`)
    .iterate();
  for (const row of rows) yield revisionOf(row);
}

export function putRevision(db: WriteHandle, revision: Revision): void {
  kept<[Row]>(
    db,
    `INSERT INTO revision (${columns})
     VALUES (@well_id, @number, @record, @changed_at, @hash, @author, @reason)`,
  ).run(rowOf(revision));
}
