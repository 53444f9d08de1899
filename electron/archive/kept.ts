import type { Statement } from 'better-sqlite3';
import type { ReadHandle } from './handles.ts';

const statements = new WeakMap<ReadHandle, Map<string, Statement>>();

/**
 * A statement of a fixed text, prepared once for each open file. For what is asked again and
 * again; never for `iterate`, which holds its statement until the last row.
 */
export function kept<Bind extends unknown[], Row = unknown>(
  db: ReadHandle,
  sql: string,
): Statement<Bind, Row> {
  const ofFile = statements.get(db) ?? new Map<string, Statement>();
  statements.set(db, ofFile);
  const statement = ofFile.get(sql) ?? db.prepare(sql);
  ofFile.set(sql, statement);
  return statement as Statement<Bind, Row>;
}
