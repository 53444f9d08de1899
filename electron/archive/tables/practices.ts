import type { ReadHandle, WriteHandle } from '../handles.ts';

/** A practice of the user as the archive holds it. */
export interface KeptPractice {
  readonly id: string;
  /** Its file, as JSON. */
  readonly json: string;
  /** ISO 8601. */
  readonly changedAt: string;
}

interface Row {
  readonly id: string;
  readonly json: string;
  readonly changed_at: string;
}

const practiceOf = ({ id, json, changed_at }: Row): KeptPractice => ({
  id,
  json,
  changedAt: changed_at,
});

/** By their ids. */
export function listPractices(db: ReadHandle): KeptPractice[] {
  return db
    .prepare<[], Row>('SELECT id, json, changed_at FROM practice ORDER BY id')
    .all()
    .map(practiceOf);
}

export function putPractice(db: WriteHandle, { id, json, changedAt }: KeptPractice): void {
  db.prepare<[string, string, string]>(
    `INSERT INTO practice (id, json, changed_at) VALUES (?, ?, ?)
     ON CONFLICT (id) DO UPDATE SET json = excluded.json, changed_at = excluded.changed_at`,
  ).run(id, json, changedAt);
}

export function dropPractice(db: WriteHandle, id: string): void {
  db.prepare<[string]>('DELETE FROM practice WHERE id = ?').run(id);
}
