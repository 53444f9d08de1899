import { SqliteError } from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { ok } from '../../../core/base/result.ts';
import { backupFolder, guarded } from '../../../electron/archive/trouble.ts';

const file = '/wells/Kalo.borefolio';

function refusalAfter(error: Error) {
  const result = guarded(file, () => {
    throw error;
  });
  if (result.ok) throw new Error('it was let through');
  return result.error;
}

describe('what the disk or the file did', () => {
  // Codes and their extended forms: sqlite.org/rescode.html.
  it.each([
    ['SQLITE_FULL', 'diskFull'],
    ['SQLITE_READONLY', 'readOnly'],
    ['SQLITE_READONLY_DBMOVED', 'readOnly'],
    ['SQLITE_BUSY', 'busy'],
    ['SQLITE_BUSY_SNAPSHOT', 'busy'],
    ['SQLITE_CANTOPEN', 'cannotOpen'],
    ['SQLITE_CANTOPEN_ISDIR', 'cannotOpen'],
    ['SQLITE_IOERR_WRITE', 'diskTrouble'],
    ['SQLITE_IOERR_FSYNC', 'diskTrouble'],
    ['SQLITE_NOTADB', 'damaged'],
    ['SQLITE_CORRUPT', 'damaged'],
    ['SQLITE_CORRUPT_INDEX', 'damaged'],
  ])('%s is refused as %s, in a sentence without that code', (code, refusal) => {
    const { code: said, sentence } = refusalAfter(new SqliteError('inner words', code));
    expect(said).toBe(refusal);
    expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(sentence).not.toMatch(/SQLITE|inner words/);
  });

  it('is a defect and thrown where it is our own fault', () => {
    for (const error of [
      new SqliteError('no such table', 'SQLITE_ERROR'),
      new SqliteError('unique', 'SQLITE_CONSTRAINT_UNIQUE'),
      new TypeError('inside'),
    ])
      expect(() => refusalAfter(error)).toThrow(error);
  });

  it('names of a damaged archive the file and the folder of its backups', () => {
    const { sentence } = refusalAfter(new SqliteError('', 'SQLITE_CORRUPT'));
    expect(sentence).toContain('Kalo.borefolio is damaged');
    expect(sentence).toContain('“Kalo backups”');
    expect(backupFolder(file)).toMatch(/[\\/]wells[\\/]Kalo backups$/);
  });

  it('is nothing where the work went well', () => {
    expect(guarded(file, () => ok(3))).toEqual({ ok: true, value: 3 });
  });
});
