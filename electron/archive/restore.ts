import { copyFileSync, existsSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Archive } from './archive.ts';
import { backUpNow } from './backup.ts';
import { openArchive } from './open.ts';
import { backupFolder, guardedLong } from './trouble.ts';
import type { ArchiveWorld } from './world.ts';

function noBackup(fileName: string): Result<never> {
  return refused(
    'noSuchBackup',
    `There is no backup ${fileName} in the folder of backups. Choose one that the list names.`,
  );
}

/** Why a backup is not put in the archive's place; undefined where it may be. */
function faultOf(copy: Archive, fileName: string): Result<undefined> {
  if (copy.readOnly !== undefined) return refused('newerBackup', copy.readOnly);
  const check = copy.check();
  if (!check.ok) return check;
  const [first] = check.value.broken;
  if (!first) return ok(undefined);
  return refused(
    'brokenBackup',
    `The backup ${fileName} is not whole: ${first.sentence} The archive was left as it is.`,
  );
}

/** Opens a copy of the backup, which brings it up to date, and leaves the backup as it is. */
async function withCopy<T>(
  backup: string,
  world: ArchiveWorld,
  use: (copy: Archive) => Promise<Result<T>>,
): Promise<Result<T>> {
  const part = `${backup}.part`;
  const clear = () => ['', '-wal', '-shm'].forEach((end) => rmSync(part + end, { force: true }));
  clear();
  copyFileSync(backup, part);
  try {
    const opened = openArchive(part, { ...world, mustExist: true });
    if (!opened.ok) return opened;
    try {
      return await use(opened.value);
    } finally {
      opened.value.close();
    }
  } finally {
    clear();
  }
}

/**
 * Gives the archive the content of one of its backups, in one transaction, while it stays open.
 * What it holds now is put aside first, as a checked copy in the folder of backups, whose name is
 * given. Refusals: `noSuchBackup`, `readOnly`, `damaged`, `newerBackup`, `brokenBackup`,
 * `backupFailed`; then nothing was changed.
 */
export async function restoreBackup(
  archive: Archive,
  fileName: string,
  world: ArchiveWorld,
): Promise<Result<string>> {
  if (archive.readOnly !== undefined) return refused('readOnly', archive.readOnly);
  const folder = backupFolder(archive.file);
  if (!existsSync(folder) || !readdirSync(folder).includes(fileName)) return noBackup(fileName);
  const backup = path.join(folder, fileName);
  return withCopy(backup, world, async (copy) => {
    const fault = faultOf(copy, fileName);
    if (!fault.ok) return fault;
    const aside = await backUpNow(archive, world.now, ' before restoring');
    if (!aside.ok) return aside;
    return guardedLong(archive.file, async () => {
      await copy.copyTo(archive.file);
      return ok(path.basename(aside.value));
    });
  });
}
