import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Archive } from './archive.ts';
import { backupFolder, guarded } from './trouble.ts';

const kept = 5;

/** Whether a copy opens, is whole, and holds as many wells as the archive; makes it one file. */
function isWhole(copy: string, wells: number): boolean {
  const db = new Database(copy);
  try {
    db.pragma('journal_mode = DELETE');
    const whole = db.pragma('quick_check(1)', { simple: true }) === 'ok';
    return whole && (db.prepare('SELECT count(*) FROM well').pluck().get() as number) >= wells;
  } finally {
    db.close();
  }
}

function backupName(file: string, day: string): string {
  const { name, ext } = path.parse(file);
  return path.join(backupFolder(file), `${name} ${day}${ext}`);
}

/** Backups of an archive, oldest first. */
export function listBackups(file: string): string[] {
  const folder = backupFolder(file);
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .map((one) => path.join(folder, one))
    .filter(
      (one) => one === backupName(file, /\d{4}-\d\d-\d\d/.exec(path.basename(one))?.[0] ?? ''),
    )
    .sort();
}

function dropOldest(file: string): void {
  for (const old of listBackups(file).slice(0, -kept)) rmSync(old);
}

function notKept(part: string, file: string): Result<never> {
  rmSync(part, { force: true });
  return refused(
    'backupFailed',
    `Today’s backup of ${path.basename(file)} could not be read back and was not kept. See that the disk is sound and has room.`,
  );
}

/**
 * Puts a checked copy of the archive beside it, at most one a day, and keeps the newest five.
 * Gives the copy's name, or none where today's is there already. The copy takes its name only
 * when it was read back whole.
 */
export async function backUpDaily(
  archive: Archive,
  now: () => string,
): Promise<Result<string | undefined>> {
  const { file } = archive;
  const target = backupName(file, now().slice(0, 10));
  if (existsSync(target)) return ok(undefined);
  const wells = archive.count();
  if (!wells.ok) return wells;
  const part = `${target}.part`;
  mkdirSync(backupFolder(file), { recursive: true });
  rmSync(part, { force: true });
  await archive.copyTo(part);
  const whole = guarded(file, () => ok(isWhole(part, wells.value)));
  if (!whole.ok || !whole.value) return notKept(part, file);
  renameSync(part, target);
  dropOldest(file);
  return ok(target);
}
