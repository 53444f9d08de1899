import { existsSync } from 'node:fs';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { backupFolder } from '../../../electron/archive/trouble.ts';
import { openService } from '../../../electron/service/openService.ts';
import { paperFileName } from '../../../electron/service/paperNames.ts';
import { openFresh, record, valueOf } from '../archive/sample.ts';

const world = { clock: () => '2025-03-01T08:00:00Z', newId: () => 'id' };

it('an archive of a newer version is read, and neither changed nor backed up', async () => {
  const archive = openFresh();
  valueOf(archive.create('a', record));
  archive.close();
  const db = new Database(archive.file);
  db.pragma('user_version = 9990');
  db.close();
  const said: string[] = [];
  const onBackupTrouble = (sentence: string) => said.push(sentence);
  const { service, close } = valueOf(openService(archive.file, { ...world, onBackupTrouble }));
  expect(await service.call('archive.state', {})).toMatchObject({
    value: { wells: 1, readOnly: true, sentence: expect.stringContaining('newer version') },
  });
  expect(await service.call('wells.open', { id: 'a' })).toMatchObject({ ok: true });
  const readOnly = { error: { code: 'readOnly' } };
  expect(await service.call('wells.save', { id: 'a', upon: 0 })).toMatchObject(readOnly);
  const moves = [{ kind: 'edit', patch: [] }] as const;
  expect(await service.call('wells.edit', { id: 'a', upon: 0, moves })).toMatchObject(readOnly);
  expect(await service.call('wells.leave', { id: 'a', upon: 0 })).toMatchObject(readOnly);
  await close();
  expect(existsSync(backupFolder(archive.file))).toBe(false);
  expect(said).toEqual([]);
});

it('a paper’s name has no blanks at the ends of the well’s number', () => {
  const named = { schemaVersion: 1, identity: { number: '  KA 1 ' } } as const;
  expect(paperFileName(named, 'A4', 1)).toBe('KA 1 as-built A4 rev 1.pdf');
});
