import { readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { openService } from '../../../electron/service/openService.ts';
import { freshFolder, valueOf } from '../archive/sample.ts';

const world = { clock: () => '2025-03-01T08:00:00Z', newId: () => 'id' };

describe('opening the service on an archive', () => {
  it('makes the day’s backup before the file is let go', async () => {
    const file = path.join(freshFolder(), 'Kalo.borefolio');
    const open = valueOf(openService(file, world));
    await open.close();
    expect(readdirSync(path.join(path.dirname(file), 'Kalo backups'))).toEqual([
      'Kalo 2025-03-01.borefolio',
    ]);
  });

  it('goes on working when the backup cannot be made, and says why', async () => {
    const file = path.join(freshFolder(), 'Kalo.borefolio');
    writeFileSync(
      path.join(path.dirname(file), 'Kalo backups'),
      'a file where the folder would be',
    );
    const said: string[] = [];
    const onBackupTrouble = (sentence: string) => said.push(sentence);
    const open = valueOf(openService(file, { ...world, onBackupTrouble }));
    expect(await open.service.call('wells.list', {})).toEqual({ ok: true, value: [] });
    await open.close();
    expect(said).toEqual([expect.stringMatching(/^Today’s backup could not be made: /)]);
  });

  it('refuses a missing archive where one must be', () => {
    const file = path.join(freshFolder(), 'none.borefolio');
    expect(openService(file, { ...world, mustExist: true })).toMatchObject({
      error: { code: 'noFile' },
    });
  });
});
