import { existsSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { backupFolder } from './trouble.ts';

/** An archive's file as a folder holds it. */
export interface CopyFile {
  readonly fileName: string;
  /** ISO 8601 moment at which it was written. */
  readonly madeAt: string;
  readonly bytes: number;
  /** Absent where the file cannot be read. */
  readonly wells?: number;
}

function wellsIn(file: string): number | undefined {
  try {
    const db = new Database(file, { readonly: true, fileMustExist: true });
    try {
      return db
        .prepare<[], number>('SELECT count(*) FROM well WHERE binned_at IS NULL')
        .pluck()
        .get();
    } finally {
      db.close();
    }
  } catch {
    // Not a database, damaged, or of a shape that no version of the program left: it is listed as such.
    return undefined;
  }
}

function copyFile(place: string): CopyFile {
  const { mtime, size } = statSync(place);
  const wells = wellsIn(place);
  const said = { fileName: path.basename(place), madeAt: mtime.toISOString(), bytes: size };
  return wells === undefined ? said : { ...said, wells };
}

/** Files in a folder with an archive's ending, newest first. */
export function listCopyFiles(folder: string, ending: string): CopyFile[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => path.extname(name) === ending)
    .map((name) => copyFile(path.join(folder, name)))
    .sort((a, b) => b.madeAt.localeCompare(a.madeAt) || b.fileName.localeCompare(a.fileName));
}

/** Everything in the folder of backups that may be one, newest first. */
export function listBackupFiles(archiveFile: string): CopyFile[] {
  return listCopyFiles(backupFolder(archiveFile), path.extname(archiveFile));
}
