import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openArchive } from '../../../electron/archive/open.ts';
import { newestVersion } from '../../../electron/archive/steps/list.ts';
import { countingWorld, freshFolder, openFresh, record, valueOf } from './sample.ts';

function refusalOf(file: string, mustExist = false) {
  const opened = openArchive(file, { ...countingWorld(), mustExist });
  if (opened.ok) throw new Error('it opened');
  return opened.error;
}

function withSql(file: string, work: (db: Database.Database) => void): void {
  const db = new Database(file);
  work(db);
  db.close();
}

describe('opening an archive', () => {
  it('makes a file that is ours, in write-ahead mode, at the newest version', () => {
    const archive = openFresh();
    expect(archive.name).toBe('Kalo');
    expect(archive.readOnly).toBeUndefined();
    withSql(archive.file, (db) => {
      expect(db.pragma('application_id', { simple: true })).toBe(0x426f7265);
      expect(db.pragma('user_version', { simple: true })).toBe(newestVersion);
      expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
    });
    archive.close();
  });

  it('finds again what was saved', () => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    archive.close();
    const again = valueOf(openArchive(archive.file, countingWorld()));
    expect(valueOf(again.open('a')).document).toEqual(record);
    again.close();
  });

  it('opens one from a newer version to read, with a sentence, and leaves it as it is', () => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    archive.close();
    withSql(archive.file, (db) => db.pragma('user_version = 9990'));
    const newer = valueOf(openArchive(archive.file, countingWorld()));
    expect(newer.readOnly).toMatch(/newer version of Borefolio.*read and printed/);
    expect(valueOf(newer.open('a')).revision).toBe(1);
    expect(newer.save('a', 0)).toMatchObject({ ok: false, error: { code: 'readOnly' } });
    newer.close();
    withSql(archive.file, (db) => expect(db.pragma('user_version', { simple: true })).toBe(9990));
  });

  it('says that a file of other bytes is damaged, and where the backups are', () => {
    const file = path.join(freshFolder(), 'Kalo.borefolio');
    writeFileSync(file, 'nothing that a database would begin with'.repeat(200));
    const { code, sentence } = refusalOf(file);
    expect(code).toBe('damaged');
    expect(sentence).toContain('Kalo.borefolio is damaged');
    expect(sentence).toContain('“Kalo backups”');
  });

  it('says that a file with spoiled pages is damaged, and writes nothing to it', () => {
    const archive = openFresh();
    for (let at = 0; at < 40; at++)
      valueOf(archive.create(`w${at}`, { ...record, notes: 'long '.repeat(500) }));
    archive.close();
    const bytes = readFileSync(archive.file);
    bytes.fill(0x5a, 8192, 60_000);
    writeFileSync(archive.file, bytes);
    expect(refusalOf(archive.file).code).toBe('damaged');
    expect(readFileSync(archive.file).equals(bytes)).toBe(true);
  });

  it('refuses a database of another program', () => {
    const file = path.join(freshFolder(), 'other.db');
    withSql(file, (db) => db.exec('CREATE TABLE other (a)'));
    expect(refusalOf(file)).toMatchObject({ code: 'notAnArchive' });
  });

  it('refuses a missing file where one must exist, and a missing folder always', () => {
    const file = path.join(freshFolder(), 'none', 'Kalo.borefolio');
    expect(refusalOf(file, true).code).toBe('noFile');
    expect(refusalOf(file).code).toBe('noFolder');
  });
});
