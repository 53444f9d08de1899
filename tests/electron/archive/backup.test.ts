import { readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { backUpDaily, listBackups } from '../../../electron/archive/backup.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { backupFolder } from '../../../electron/archive/trouble.ts';
import { countingWorld, openFresh, record, valueOf } from './sample.ts';

const onDay = (day: number) => () => `2025-03-0${day}T08:00:00Z`;

describe('the rolling backup', () => {
  it('is an archive that opens by itself with what was saved', async () => {
    const archive = openFresh();
    valueOf(archive.create('a', record));
    const target = valueOf(await backUpDaily(archive, onDay(1)))!;
    expect(path.basename(target)).toBe('Kalo 2025-03-01.borefolio');
    expect(readdirSync(backupFolder(archive.file))).toEqual(['Kalo 2025-03-01.borefolio']);
    const copy = valueOf(openArchive(target, countingWorld()));
    expect(valueOf(copy.open('a')).document).toEqual(record);
    copy.close();
    archive.close();
  });

  it('is made once a day', async () => {
    const archive = openFresh();
    valueOf(await backUpDaily(archive, onDay(1)));
    expect(valueOf(await backUpDaily(archive, onDay(1)))).toBeUndefined();
    archive.close();
  });

  it('keeps the newest five and touches no other file', async () => {
    const archive = openFresh();
    for (const day of [1, 2, 3, 4, 5, 6]) valueOf(await backUpDaily(archive, onDay(day)));
    writeFileSync(path.join(backupFolder(archive.file), 'Kalo 2025.txt'), 'mine');
    valueOf(await backUpDaily(archive, onDay(7)));
    expect(listBackups(archive.file).map((file) => path.basename(file).slice(5, 15))).toEqual([
      '2025-03-03',
      '2025-03-04',
      '2025-03-05',
      '2025-03-06',
      '2025-03-07',
    ]);
    expect(readdirSync(backupFolder(archive.file))).toContain('Kalo 2025.txt');
    archive.close();
  });

  it('is not kept when the copy cannot be read back', async () => {
    const archive = openFresh();
    const spoiling = {
      ...archive,
      copyTo: async (target: string) => writeFileSync(target, 'spoiled '.repeat(1000)),
    };
    expect(await backUpDaily(spoiling, onDay(1))).toMatchObject({
      error: { code: 'backupFailed' },
    });
    expect(readdirSync(backupFolder(archive.file))).toEqual([]);
    archive.close();
  });
});
