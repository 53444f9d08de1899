import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { commands } from '../../../electron/cli/commands.ts';
import { ownFolder, type } from './typed.ts';

describe('the command line', () => {
  it('lists every command in its help and gives 0', async () => {
    const { code, out } = await type(ownFolder(), ['--help']);
    expect(code).toBe(0);
    for (const { name } of commands) expect(out.join('\n')).toContain(`borefolio ${name} `);
    expect((await type(ownFolder(), ['check', '--help'])).code).toBe(0);
  });

  it.each([
    [[], 'Say what to do.'],
    [['draw'], 'There is no command draw.'],
    [['paper'], 'After paper comes as-built or laying-out or '],
    [['check'], 'Name a file: borefolio check FILE.'],
    [['check', 'a.json', 'b.json'], 'Name one file only'],
    [['check', 'a.json', '--jsn'], '--jsn'],
    [['check', 'a.json'], 'There is no file a.json'],
  ])('answers %j with 2 and one sentence', async (args, sentence) => {
    const { code, out, err } = await type(ownFolder(), args);
    expect(code).toBe(2);
    expect(out).toEqual([]);
    expect(err).toHaveLength(1);
    expect(err[0]).toContain(sentence);
  });

  it('tells a folder, an archive and a file that is no JSON from a record', async () => {
    const folder = ownFolder();
    mkdirSync(path.join(folder, 'wells'));
    writeFileSync(path.join(folder, 'notes.txt'), 'depth 32 m');
    await type(folder, ['demo-archive', 'a.borefolio']);
    expect((await type(folder, ['check', 'wells'])).err[0]).toContain('is a folder');
    expect((await type(folder, ['check', 'a.borefolio'])).err[0]).toContain('an archive of wells');
    const text = await type(folder, ['check', 'notes.txt']);
    expect(text).toMatchObject({ code: 1 });
    expect(text.err[0]).toContain('notes.txt is not JSON');
  });
});
