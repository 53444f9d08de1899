import type { ReadHandle, WriteHandle } from '../handles.ts';

/** A set of guideline values of the user as the archive holds it. */
export interface KeptGuidelines {
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

const setOf = ({ id, json, changed_at }: Row): KeptGuidelines => ({
  id,
  json,
  changedAt: changed_at,
});

/** By their ids. */
export function listGuidelines(db: ReadHandle): KeptGuidelines[] {
  return db
    .prepare<[], Row>('SELECT id, json, changed_at FROM guidelines ORDER BY id')
    .all()
    .map(setOf);
}

export function putGuidelines(db: WriteHandle, { id, json, changedAt }: KeptGuidelines): void {
  db.prepare<[string, string, string]>(
    `INSERT INTO guidelines (id, json, changed_at) VALUES (?, ?, ?)
     ON CONFLICT (id) DO UPDATE SET json = excluded.json, changed_at = excluded.changed_at`,
  ).run(id, json, changedAt);
}

export function dropGuidelines(db: WriteHandle, id: string): void {
  db.prepare<[string]>('DELETE FROM guidelines WHERE id = ?').run(id);
}
