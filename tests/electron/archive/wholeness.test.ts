import { readFileSync, truncateSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { looksWhole } from '../../../electron/archive/wholeness.ts';
import { freshFolder } from './sample.ts';

/** A database whose second table has a spoiled page, and which is at least so many bytes long. */
function spoiledFile(bytes: number): string {
  const file = path.join(freshFolder(), 'spoiled.db');
  const db = new Database(file);
  db.exec('CREATE TABLE a (b); CREATE TABLE c (d); INSERT INTO c VALUES (1), (2)');
  const page = db.pragma('page_size', { simple: true }) as number;
  db.close();
  const written = readFileSync(file).fill(0xa5, 2 * page);
  writeFileSync(file, written);
  if (bytes > 0) truncateSync(file, bytes);
  return file;
}

it('every page of a file is looked at, unless there are so many that opening would take long', () => {
  for (const [bytes, looks] of [
    [0, false],
    [100_000_001, true],
  ] as const) {
    const file = spoiledFile(bytes);
    const db = new Database(file, { readonly: true });
    expect(looksWhole(db, file)).toBe(looks);
    db.close();
  }
});
