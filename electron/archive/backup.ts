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

/** Daily backups of an archive, oldest first. */
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
    `The backup of ${path.basename(file)} could not be read back and was not kept. See that the disk is sound and has room.`,
  );
}

/**
 * Puts a copy of the archive in a file. It takes its name only when it was read back whole: it
 * opens, SQLite finds no fault in it, and it holds as many wells.
 */
export async function copyChecked(archive: Archive, target: string): Promise<Result<string>> {
  const { file } = archive;
  const wells = archive.count();
  if (!wells.ok) return wells;
  const part = `${target}.part`;
  mkdirSync(path.dirname(target), { recursive: true });
  rmSync(part, { force: true });
  await archive.copyTo(part);
  const whole = guarded(file, () => ok(isWhole(part, wells.value)));
  if (!whole.ok || !whole.value) return notKept(part, file);
  renameSync(part, target);
  return ok(target);
}

/**
 * Puts a checked copy of the archive beside it, at most one a day, and keeps the newest five.
 * Gives the copy's name, or none where today's is there already.
 */
export async function backUpDaily(
  archive: Archive,
  now: () => string,
): Promise<Result<string | undefined>> {
  const { file } = archive;
  const target = backupName(file, now().slice(0, 10));
  if (existsSync(target)) return ok(undefined);
  const made = await copyChecked(archive, target);
  if (made.ok) dropOldest(file);
  return made;
}

/** A name in the folder of backups that no file has: day, minute, and what for. */
function freeName(file: string, moment: string, suffix: string): string {
  const stamp = `${moment.slice(0, 10)} ${moment.slice(11, 16).replace(':', '')}${suffix}`;
  for (let at = 1; ; at += 1) {
    const name = backupName(file, at === 1 ? stamp : `${stamp} (${at})`);
    if (!existsSync(name)) return name;
  }
}

/**
 * Puts a checked copy beside the archive that no later backup takes the place of. `suffix` says
 * in its name what it was made for.
 */
export function backUpNow(
  archive: Archive,
  now: () => string,
  suffix = '',
): Promise<Result<string>> {
  return copyChecked(archive, freeName(archive.file, now(), suffix));
}
