import type { ReadHandle, WriteHandle } from '../handles.ts';

/** What a binder shall hold, as the archive keeps it. */
export interface KeptBinder {
  readonly name: string;
  /** The wish, as JSON. */
  readonly json: string;
  /** ISO 8601. */
  readonly changedAt: string;
}

interface Row {
  readonly name: string;
  readonly json: string;
  readonly changed_at: string;
}

const binderOf = ({ name, json, changed_at }: Row): KeptBinder => ({
  name,
  json,
  changedAt: changed_at,
});

/** By their names. */
export function listBinders(db: ReadHandle): KeptBinder[] {
  return db
    .prepare<[], Row>('SELECT name, json, changed_at FROM binder ORDER BY name')
    .all()
    .map(binderOf);
}

export function putBinder(db: WriteHandle, { name, json, changedAt }: KeptBinder): void {
  db.prepare<[string, string, string]>(
    `INSERT INTO binder (name, json, changed_at) VALUES (?, ?, ?)
     ON CONFLICT (name) DO UPDATE SET json = excluded.json, changed_at = excluded.changed_at`,
  ).run(name, json, changedAt);
}

export function dropBinder(db: WriteHandle, name: string): void {
  db.prepare<[string]>('DELETE FROM binder WHERE name = ?').run(name);
}
