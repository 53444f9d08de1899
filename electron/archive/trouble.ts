import path from 'node:path';
import { SqliteError } from 'better-sqlite3';
import { refused, type Result } from '../../core/base/result.ts';

/** Folder that holds an archive's backups, beside the archive. */
export function backupFolder(file: string): string {
  return path.join(path.dirname(file), `${path.parse(file).name} backups`);
}

/** Says that a file cannot be trusted. Nothing more is written to it. */
export function damaged(file: string): Result<never> {
  const said =
    `The archive ${path.basename(file)} is damaged. It was left as it is. ` +
    `Put a copy of it aside, then open the newest file in the folder “${path.basename(backupFolder(file))}” beside it.`;
  return refused('damaged', said);
}

/** By the first parts of SQLite's result codes; see sqlite.org/rescode.html. */
const sentences: Readonly<Record<string, readonly [code: string, sentence: string]>> = {
  FULL: ['diskFull', 'The disk is full: nothing was saved. Make room, then save again.'],
  READONLY: ['readOnly', 'The archive is write-protected: nothing was saved. Work on a copy.'],
  BUSY: [
    'busy',
    'Another program is writing to the archive. Try again when it is done; nothing was saved.',
  ],
  CANTOPEN: [
    'cannotOpen',
    'The archive cannot be opened. See that its folder exists and that you may write there.',
  ],
  IOERR: [
    'diskTrouble',
    'The disk gave an error: nothing was saved. See that the disk is still connected.',
  ],
};

function refusalOf(file: string, error: unknown): Result<never> | undefined {
  if (!(error instanceof SqliteError)) return undefined;
  const kind = error.code.split('_')[1] ?? '';
  if (kind === 'NOTADB' || kind === 'CORRUPT') return damaged(file);
  const known = sentences[kind];
  return known && refused(...known);
}

/**
 * Does something with an archive; what the disk or the file did comes back as a refusal.
 * @throws what is our own fault.
 */
export function guarded<T>(file: string, work: () => Result<T>): Result<T> {
  try {
    return work();
  } catch (error) {
    return told(file, error);
  }
}

/** As `guarded`, for work that takes its time. */
export async function guardedLong<T>(
  file: string,
  work: () => Promise<Result<T>>,
): Promise<Result<T>> {
  try {
    return await work();
  } catch (error) {
    return told(file, error);
  }
}

function told(file: string, error: unknown): Result<never> {
  const refusal = refusalOf(file, error);
  if (!refusal) throw error;
  return refusal;
}
