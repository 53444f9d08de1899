import { statSync } from 'node:fs';
import type { Database } from 'better-sqlite3';

/**
 * Bytes up to which every page of a file is read when it is opened: some ten thousand wells, a
 * blink. In longer files a spoiled page is told of once it is read, and by the daily backup, which
 * reads back all of them.
 */
const readThrough = 100_000_000;

/** Whether SQLite finds a fault in a file, as far as is looked at when it is opened. */
export function looksWhole(db: Database, file: string): boolean {
  if (statSync(file).size > readThrough) return true;
  return db.pragma('quick_check(1)', { simple: true }) === 'ok';
}
