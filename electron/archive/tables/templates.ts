import type { ReadHandle, WriteHandle } from '../handles.ts';

/** A template of an organisation as the archive holds it. */
export interface KeptTemplate {
  /** Name of its file, without the ending. */
  readonly name: string;
  /** The one that papers are made with; of an archive's at most one is. */
  readonly usual: boolean;
  /** Its file, as JSON with its logos within. */
  readonly json: string;
  /** ISO 8601. */
  readonly changedAt: string;
}

interface Row {
  readonly name: string;
  readonly usual: 0 | 1;
  readonly json: string;
  readonly changed_at: string;
}

const columns = 'name, usual, json, changed_at';

const templateOf = ({ usual, changed_at, ...row }: Row): KeptTemplate => ({
  ...row,
  usual: usual === 1,
  changedAt: changed_at,
});

/** By their names. */
export function listTemplates(db: ReadHandle): KeptTemplate[] {
  return db.prepare<[], Row>(`SELECT ${columns} FROM template ORDER BY name`).all().map(templateOf);
}

export function usualTemplate(db: ReadHandle): KeptTemplate | undefined {
  const row = db.prepare<[], Row>(`SELECT ${columns} FROM template WHERE usual = 1`).get();
  return row && templateOf(row);
}

/** One of that name keeps to be the usual one, or not to be. */
export function putTemplate(
  db: WriteHandle,
  { name, json, changedAt }: Omit<KeptTemplate, 'usual'>,
): void {
  db.prepare<[string, string, string]>(
    `INSERT INTO template (name, usual, json, changed_at) VALUES (?, 0, ?, ?)
     ON CONFLICT (name) DO UPDATE SET json = excluded.json, changed_at = excluded.changed_at`,
  ).run(name, json, changedAt);
}

/** Makes one the usual one in place of any other. */
export function chooseTemplate(db: WriteHandle, name: string): void {
  chooseNoTemplate(db);
  db.prepare<[string]>('UPDATE template SET usual = 1 WHERE name = ?').run(name);
}

export function chooseNoTemplate(db: WriteHandle): void {
  db.prepare('UPDATE template SET usual = 0 WHERE usual = 1').run();
}

export function dropTemplate(db: WriteHandle, name: string): void {
  db.prepare<[string]>('DELETE FROM template WHERE name = ?').run(name);
}
