import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownFolder, type } from './typed.ts';

const demo = (name: string) => path.resolve(import.meta.dirname, '../../../demo-data', name);
const bytes = (folder: string, name: string) => readFileSync(path.join(folder, name));

describe('borefolio paper laying-out', () => {
  it('writes a record’s sheet as a PDF, the same bytes each time', async () => {
    const folder = ownFolder();
    const record = demo('laid-out-45m.json');
    const first = await type(folder, ['paper', 'laying-out', record, '-o', 'one.pdf']);
    await type(folder, ['paper', 'laying-out', record, '-o', 'two.pdf']);
    expect(first).toMatchObject({ code: 0, out: ['Written: one.pdf'] });
    expect(bytes(folder, 'one.pdf').subarray(0, 5).toString()).toBe('%PDF-');
    expect(bytes(folder, 'one.pdf').equals(bytes(folder, 'two.pdf'))).toBe(true);
  });

  it('writes drawing files in the language asked for', async () => {
    const folder = ownFolder();
    const args = ['paper', 'laying-out', demo('laid-out-45m.json'), '--language', 'fr'];
    await type(folder, [...args, '-o', 'sheet.svg']);
    expect(bytes(folder, 'sheet.svg').toString()).toContain('Plan de pose');
  });

  it('writes a sheet for every well of an archive, named by number and revision', async () => {
    const folder = ownFolder();
    await type(folder, ['demo-archive', 'demo.borefolio']);
    const args = ['paper', 'laying-out', 'demo.borefolio', '--language', 'pt', '-o', 'out/'];
    await type(folder, args);
    const names = readdirSync(path.join(folder, 'out'));
    expect(names).toContain('KV-26-015 laying-out pt rev 1.pdf');
    expect(names).toHaveLength(8);
  });

  it('has one size', async () => {
    const args = ['paper', 'laying-out', demo('laid-out-45m.json'), '--paper', 'A3', '-o', 'x.pdf'];
    expect((await type(ownFolder(), args)).code).toBe(2);
  });
});
