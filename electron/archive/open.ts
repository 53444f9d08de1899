import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { archiveOf, type Archive } from './archive.ts';
import { isForeign, notAnArchive, versionOf } from './fileMarks.ts';
import type { WriteHandle } from './handles.ts';
import { bringLinesUpToDate, bringWordsUpToDate } from './line.ts';
import { newestVersion, steps } from './steps/list.ts';
import { takeSteps } from './steps/take.ts';
import { damaged, guarded } from './trouble.ts';
import { looksWhole } from './wholeness.ts';
import type { ArchiveWorld } from './world.ts';

export interface OpenOptions extends ArchiveWorld {
  /** True where a missing file is a mistake and not the wish for a new archive. */
  readonly mustExist?: boolean;
}

function mayWrite(file: string): boolean {
  try {
    accessSync(file, constants.W_OK);
    return true;
  } catch {
    return !existsSync(file);
  }
}

function connect(file: string, readonly: boolean): Database.Database {
  const db = new Database(file, { readonly });
  db.pragma('foreign_keys = ON');
  return db;
}

/** Full sync: what the user was told is saved outlives a pulled plug. */
function readyToWrite(db: Database.Database, world: ArchiveWorld): WriteHandle {
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  takeSteps(db as WriteHandle, steps);
  bringLinesUpToDate(db as WriteHandle);
  bringWordsUpToDate(db as WriteHandle, world);
  return db as WriteHandle;
}

const newerSentence =
  'This archive was made by a newer version of Borefolio. It can be read and printed here, and not changed. Install the newer version to change it.';
const protectedSentence =
  'This archive is write-protected. It can be read and printed, and not changed. Copy it to a place where you may write.';

function openReadOnly(file: string, options: OpenOptions, sentence: string): Result<Archive> {
  const db = connect(file, true);
  if (versionOf(db) < newestVersion) {
    db.close();
    return refused(
      'oldAndProtected',
      `${path.basename(file)} comes from an older version and must be brought up to date, but is write-protected. Copy it to a place where you may write and open the copy.`,
    );
  }
  return ok(archiveOf(file, { reader: db, readOnly: sentence }, options));
}

function openConnected(
  db: Database.Database,
  file: string,
  options: OpenOptions,
): Result<Archive> | 'newer' {
  if (isForeign(db)) return notAnArchive(file);
  if (!looksWhole(db, file)) return damaged(file);
  if (versionOf(db) > newestVersion) return 'newer';
  const writer = readyToWrite(db, options);
  return ok(archiveOf(file, { reader: writer, writer }, options));
}

/**
 * Opens an archive, and makes it where there is none. One from a newer version, or on a
 * protected disk, opens read-only and says why. Refusals: `noFile`, `damaged`, `notAnArchive`,
 * `oldAndProtected`, `cannotOpen` and what else the disk says.
 */
export function openArchive(file: string, options: OpenOptions): Result<Archive> {
  if (options.mustExist && !existsSync(file))
    return refused('noFile', `There is no archive ${file}. Check the name and the folder.`);
  return guarded(file, () => {
    if (!existsSync(path.dirname(file)))
      return refused('noFolder', `There is no folder ${path.dirname(file)}. Make it first.`);
    if (!mayWrite(file)) return openReadOnly(file, options, protectedSentence);
    const db = connect(file, false);
    let opened: Result<Archive> | 'newer' = 'newer';
    try {
      opened = openConnected(db, file, options);
    } finally {
      if (opened === 'newer' || !opened.ok) db.close();
    }
    return opened === 'newer' ? openReadOnly(file, options, newerSentence) : opened;
  });
}
