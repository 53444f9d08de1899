import path from 'node:path';
import type { Database } from 'better-sqlite3';
import { refused, type Result } from '../../core/base/result.ts';
import { applicationId } from './steps/take.ts';

function number(db: Database, pragma: string): number {
  return db.pragma(pragma, { simple: true }) as number;
}

/** Number of the last step that a file has taken. */
export function versionOf(db: Database): number {
  return number(db, 'user_version');
}

/** True for a database that another program made. */
export function isForeign(db: Database): boolean {
  const empty = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() === 0;
  return !empty && number(db, 'application_id') !== applicationId;
}

export function notAnArchive(file: string): Result<never> {
  return refused(
    'notAnArchive',
    `${path.basename(file)} is a database of another program. Choose a file that Borefolio made.`,
  );
}
