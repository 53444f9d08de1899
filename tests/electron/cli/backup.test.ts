import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownFolder, type } from './typed.ts';

async function demoFolder(): Promise<string> {
  const folder = ownFolder();
  await type(folder, ['demo-archive', 'demo.borefolio']);
  return folder;
}

describe('borefolio backup', () => {
  it('makes a copy, lists it, and gives the archive its content back', async () => {
    const folder = await demoFolder();
    const made = await type(folder, ['backup', 'demo.borefolio', '--json']);
    const { backup } = JSON.parse(made.out.join('')) as { backup: string };
    expect(existsSync(backup)).toBe(true);
    const listed = await type(folder, ['backup', 'demo.borefolio', '--list']);
    expect(listed.out).toEqual([
      expect.stringMatching(/^demo 2026-03-02 1000\.borefolio .* wells$/),
    ]);
    const name = path.basename(backup);
    const restored = await type(folder, ['backup', 'demo.borefolio', '--restore', name]);
    expect(restored).toMatchObject({ code: 0 });
    expect(restored.out[0]).toContain('demo 2026-03-02 1000 before restoring.borefolio');
    const none = await type(folder, ['backup', 'demo.borefolio', '--restore', 'none.borefolio']);
    expect(none).toMatchObject({ code: 1, err: [expect.stringContaining('no backup none')] });
  });

  it('puts a copy where it is told, and never over another file', async () => {
    const folder = await demoFolder();
    const typed = ['backup', 'demo.borefolio', '-o', 'copy.borefolio'];
    expect(await type(folder, typed)).toMatchObject({ code: 0 });
    expect(await type(folder, typed)).toMatchObject({ code: 2 });
    expect((await type(folder, ['verify', 'copy.borefolio'])).code).toBe(0);
  });
});

describe('borefolio rescue', () => {
  it('says with its exit code whether something is lost', async () => {
    const folder = await demoFolder();
    const whole = await type(folder, ['rescue', 'demo.borefolio', '-o', 'new.borefolio']);
    expect(whole.code).toBe(0);
    expect(whole.out[0]).toMatch(/^new\.borefolio holds \d+ wells with \d+ revisions/);
    const bytes = readFileSync(path.join(folder, 'demo.borefolio'));
    const start = Buffer.from('{"schemaVersion"');
    const last = bytes.lastIndexOf(start);
    for (let at = bytes.indexOf(start); at < last; at = bytes.indexOf(start, at + 1))
      bytes.fill(0xa5, at, at + 200);
    writeFileSync(path.join(folder, 'spoiled.borefolio'), bytes);
    const args = ['rescue', 'spoiled.borefolio', '-o', 'left.borefolio', '--json'];
    const spoiled = await type(folder, args);
    expect(spoiled.code).toBe(1);
    const told = JSON.parse(spoiled.out.join('\n')) as { remarks: { sentence: string }[] };
    expect(told.remarks[0]!.sentence).toMatch(/could( not)? be read/);
    expect((await type(folder, ['verify', 'left.borefolio'])).code).toBe(0);
    expect((await type(folder, ['rescue', 'spoiled.borefolio'])).code).toBe(2);
  });
});
