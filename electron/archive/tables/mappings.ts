import type { ReadHandle, WriteHandle } from '../handles.ts';

/** How the columns of a form of tables are matched, under the name that a person gave it. */
export interface KeptMapping {
  readonly name: string;
  /** Its file, as JSON. */
  readonly json: string;
  /** ISO 8601. */
  readonly changedAt: string;
}

interface Row {
  readonly name: string;
  readonly json: string;
  readonly changed_at: string;
}

const mappingOf = ({ name, json, changed_at }: Row): KeptMapping => ({
  name,
  json,
  changedAt: changed_at,
});

/** The newest first. */
export function listMappings(db: ReadHandle): KeptMapping[] {
  return db
    .prepare<[], Row>('SELECT name, json, changed_at FROM mapping ORDER BY changed_at DESC, name')
    .all()
    .map(mappingOf);
}

export function putMapping(db: WriteHandle, { name, json, changedAt }: KeptMapping): void {
  db.prepare<[string, string, string]>(
    `INSERT INTO mapping (name, json, changed_at) VALUES (?, ?, ?)
     ON CONFLICT (name) DO UPDATE SET json = excluded.json, changed_at = excluded.changed_at`,
  ).run(name, json, changedAt);
}

export function dropMapping(db: WriteHandle, name: string): void {
  db.prepare<[string]>('DELETE FROM mapping WHERE name = ?').run(name);
}
