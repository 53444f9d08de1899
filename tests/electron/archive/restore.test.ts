import { readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { backUpNow } from '../../../electron/archive/backup.ts';
import { listBackupFiles } from '../../../electron/archive/backupFiles.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { restoreBackup } from '../../../electron/archive/restore.ts';
import { backupFolder } from '../../../electron/archive/trouble.ts';
import { countingWorld, openFresh, record, retype, revise, valueOf } from './sample.ts';

const world = countingWorld();

/** An archive with one well, its backup, and what was done after it. */
async function afterBackup() {
  const archive = openFresh();
  valueOf(archive.create('a', record));
  const backup = path.basename(valueOf(await backUpNow(archive, world.now)));
  valueOf(revise(archive, 'a', { ...record, notes: 'after the backup' }));
  valueOf(archive.create('b', record));
  return { archive, backup };
}

describe('a backup that is put back', () => {
  it('gives the open archive what it held then, and puts aside what it held now', async () => {
    const { archive, backup } = await afterBackup();
    const before = valueOf(archive.touched());
    const aside = valueOf(await restoreBackup(archive, backup, world));
    expect(valueOf(archive.count())).toBe(1);
    expect(valueOf(archive.open('a')).document).toEqual(record);
    expect(valueOf(archive.check()).broken).toEqual([]);
    expect(valueOf(archive.touched())).not.toBe(before);
    valueOf(revise(archive, 'a', { ...record, notes: 'work goes on' }));
    archive.close();

    const kept = valueOf(openArchive(path.join(backupFolder(archive.file), aside), world));
    expect(valueOf(kept.count())).toBe(2);
    expect(valueOf(kept.open('a')).document).toEqual({ ...record, notes: 'after the backup' });
    kept.close();
  });

  it('leaves the backup as it is and no file besides', async () => {
    const { archive, backup } = await afterBackup();
    const aside = valueOf(await restoreBackup(archive, backup, world));
    expect(readdirSync(backupFolder(archive.file)).sort()).toEqual([aside, backup].sort());
    valueOf(await restoreBackup(archive, aside, world));
    expect(valueOf(archive.count())).toBe(2);
    archive.close();
  });

  it('puts aside what was typed and is in no revision', async () => {
    const { archive, backup } = await afterBackup();
    valueOf(retype(archive, 'a', { ...record, notes: 'only typed' }));
    const aside = valueOf(await restoreBackup(archive, backup, world));
    archive.close();
    const kept = valueOf(openArchive(path.join(backupFolder(archive.file), aside), world));
    expect(valueOf(kept.working('a')).desk.record).toMatchObject({ notes: 'only typed' });
    kept.close();
  });

  it('is refused where it is not whole, and changes nothing', async () => {
    const { archive, backup } = await afterBackup();
    const db = new Database(path.join(backupFolder(archive.file), backup));
    db.exec('DROP TRIGGER revision_is_written_once');
    db.prepare("UPDATE revision SET record = '{}'").run();
    db.close();
    expect(await restoreBackup(archive, backup, world)).toMatchObject({
      error: { code: 'brokenBackup' },
    });
    expect(valueOf(archive.count())).toBe(2);
    expect(readdirSync(backupFolder(archive.file))).toEqual([backup]);
    archive.close();
  });

  it('is looked for in the folder of backups alone', async () => {
    const { archive } = await afterBackup();
    const outside = path.join('..', path.basename(archive.file));
    for (const name of ['none.borefolio', outside, ''])
      expect(await restoreBackup(archive, name, world)).toMatchObject({
        error: { code: 'noSuchBackup' },
      });
    archive.close();
  });
});

describe('the list of backups', () => {
  it('says of each how many wells it holds, and which cannot be read', async () => {
    const { archive, backup } = await afterBackup();
    const spoiled = path.join(backupFolder(archive.file), 'Kalo spoiled.borefolio');
    writeFileSync(spoiled, 'spoiled '.repeat(1000));
    const byName = new Map(listBackupFiles(archive.file).map((one) => [one.fileName, one]));
    expect(byName.get(backup)).toMatchObject({ wells: 1 });
    expect(byName.get('Kalo spoiled.borefolio')).toMatchObject({ bytes: 8000 });
    expect(byName.get('Kalo spoiled.borefolio')).not.toHaveProperty('wells');
    archive.close();
  });

  it('holds two that were made within one minute', async () => {
    const archive = openFresh();
    const now = () => '2025-03-01T08:12:30Z';
    const names = [
      valueOf(await backUpNow(archive, now)),
      valueOf(await backUpNow(archive, now)),
    ].map((name) => path.basename(name));
    expect(names).toEqual(['Kalo 2025-03-01 0812.borefolio', 'Kalo 2025-03-01 0812 (2).borefolio']);
    archive.close();
  });
});
