import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { refused, type Result } from '../../../core/base/result.ts';
import { isForeign, notAnArchive, versionOf } from '../fileMarks.ts';
import type { ReadHandle, WriteHandle } from '../handles.ts';
import { newestVersion, steps } from '../steps/list.ts';
import { takeSteps } from '../steps/take.ts';
import { guarded } from '../trouble.ts';

/** Brings a copy up to date, so that the file itself stays as its owner's version made it. */
function throughCopy<T>(file: string, use: (db: ReadHandle) => Result<T>): Result<T> {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-other-'));
  const copy = path.join(folder, path.basename(file));
  try {
    for (const end of ['', '-wal'])
      if (existsSync(file + end)) copyFileSync(file + end, copy + end);
    const db = new Database(copy) as WriteHandle;
    try {
      takeSteps(db, steps);
      return use(db);
    } finally {
      db.close();
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function newer(file: string): Result<never> {
  return refused(
    'newerArchive',
    `${path.basename(file)} was made by a newer version of Borefolio. Install that version to take it in; nothing was changed.`,
  );
}

/**
 * Reads another archive and leaves its file as it is. Refusals: `noFile`, `damaged`,
 * `notAnArchive`, `newerArchive`.
 */
export function readOther<T>(file: string, use: (db: ReadHandle) => Result<T>): Result<T> {
  if (!existsSync(file))
    return refused('noFile', `There is no archive ${file}. Check the name and the folder.`);
  return guarded(file, () => {
    const db = new Database(file, { readonly: true, fileMustExist: true });
    try {
      if (isForeign(db)) return notAnArchive(file);
      const version = versionOf(db);
      if (version > newestVersion) return newer(file);
      return version === newestVersion ? use(db) : throughCopy(file, use);
    } finally {
      db.close();
    }
  });
}
