import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkCall } from '../../../core/contract/check.ts';
import { settingsIn } from '../../../electron/service/settingsFile.ts';
import { freshService } from './sample.ts';

const folder = () => mkdtempSync(path.join(tmpdir(), 'borefolio-test-'));

describe('the settings', () => {
  it('are empty until somebody chooses, and keep what was chosen before', async () => {
    const service = freshService();
    expect(await service.call('settings.read', {})).toEqual({ ok: true, value: {} });
    await service.call('settings.write', { language: 'pt' });
    await service.call('settings.write', { contrast: 'high' });
    const value = { language: 'pt', contrast: 'high' };
    expect(await service.call('settings.read', {})).toEqual({ ok: true, value });
  });

  it('outlive the program in a file, whose folder is made', async () => {
    const file = path.join(folder(), 'new', 'settings.json');
    await settingsIn(file).write({ language: 'fr', tablesPercent: 40 });
    expect(settingsIn(file).read()).toEqual({ language: 'fr', tablesPercent: 40 });
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual({ language: 'fr', tablesPercent: 40 });
  });

  it('start anew from a file that is spoilt or says what the program does not know', () => {
    for (const text of ['{"language":', '{"language":"xx"}', '[]', '{"size":3}']) {
      const file = path.join(folder(), 'settings.json');
      writeFileSync(file, text);
      expect(settingsIn(file).read()).toEqual({});
    }
  });

  it('hold until the end where the disk takes no note of them', async () => {
    const blocked = path.join(folder(), 'file');
    writeFileSync(blocked, '');
    const store = settingsIn(path.join(blocked, 'settings.json'));
    await store.write({ language: 'pt' });
    expect(store.read()).toEqual({ language: 'pt' });
  });

  it('are refused as arguments when they are not settings', () => {
    for (const args of [{ language: 'de' }, { contrast: 'low' }, { tablesPercent: 200 }, { a: 1 }])
      expect(checkCall('settings.write', args)).toMatchObject({
        ok: false,
        error: { code: 'badArguments' },
      });
  });
});
