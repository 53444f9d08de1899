import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { refused, type Result } from '../../../core/base/result.ts';
import type { ArchiveWorld } from '../archive.ts';
import type { ReadHandle } from '../handles.ts';
import { openArchive } from '../open.ts';
import { newestVersion } from '../steps/list.ts';
import { guarded } from '../trouble.ts';

function versionOf(file: string): number {
  const db = new Database(file, { readonly: true, fileMustExist: true });
  try {
    return db.pragma('user_version', { simple: true }) as number;
  } finally {
    db.close();
  }
}

function readThrough<T>(file: string, use: (db: ReadHandle) => Result<T>): Result<T> {
  const db = new Database(file, { readonly: true, fileMustExist: true });
  try {
    return use(db);
  } finally {
    db.close();
  }
}

/** Brings a copy up to date, so that the file itself stays as its owner's version made it. */
function throughCopy<T>(
  file: string,
  world: ArchiveWorld,
  use: (db: ReadHandle) => Result<T>,
): Result<T> {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-other-'));
  const copy = path.join(folder, path.basename(file));
  try {
    for (const end of ['', '-wal'])
      if (existsSync(file + end)) copyFileSync(file + end, copy + end);
    const opened = openArchive(copy, { ...world, mustExist: true });
    if (!opened.ok) return opened;
    const { readOnly } = opened.value;
    opened.value.close();
    if (readOnly !== undefined) return refused('newerArchive', readOnly);
    return readThrough(copy, use);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Reads another archive and leaves its file as it is. Refusals: `noFile`, `damaged`,
 * `notAnArchive`, `newerArchive`.
 */
export function readOther<T>(
  file: string,
  world: ArchiveWorld,
  use: (db: ReadHandle) => Result<T>,
): Result<T> {
  if (!existsSync(file))
    return refused('noFile', `There is no archive ${file}. Check the name and the folder.`);
  return guarded(file, () =>
    versionOf(file) === newestVersion ? readThrough(file, use) : throughCopy(file, world, use),
  );
}
