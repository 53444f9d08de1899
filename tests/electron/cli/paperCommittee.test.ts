import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownFolder, type } from './typed.ts';

const demo = (name: string) => path.resolve(import.meta.dirname, '../../../demo-data', name);
const bytes = (folder: string, name: string) => readFileSync(path.join(folder, name));
const record = demo('hand-drilled-32m.json');

describe('borefolio paper committee', () => {
  it('writes a record’s sheet as a PDF, the same bytes each time', async () => {
    const folder = ownFolder();
    const first = await type(folder, ['paper', 'committee', record, '-o', 'one.pdf']);
    await type(folder, ['paper', 'committee', record, '-o', 'two.pdf']);
    expect(first).toMatchObject({ code: 0, out: ['Written: one.pdf'] });
    expect(bytes(folder, 'one.pdf').subarray(0, 5).toString()).toBe('%PDF-');
    expect(bytes(folder, 'one.pdf').equals(bytes(folder, 'two.pdf'))).toBe(true);
  });

  it('writes a page for each of two languages', async () => {
    const folder = ownFolder();
    const args = ['paper', 'committee', record, '--language', 'fr,pt', '-o', 'sheet.svg'];
    await type(folder, args);
    expect(bytes(folder, 'sheet-1.svg').toString()).toContain('Qui appeler');
    expect(bytes(folder, 'sheet-2.svg').toString()).toContain('A quem ligar');
  });

  it('writes both side by side on A3', async () => {
    const folder = ownFolder();
    const args = ['paper', 'committee', record, '--language', 'fr,en', '--paper', 'A3'];
    await type(folder, [...args, '-o', 'sheet.svg']);
    const sheet = bytes(folder, 'sheet.svg').toString();
    expect(sheet).toContain('Qui appeler');
    expect(sheet).toContain('Who to call');
  });

  it('writes a sheet for every well of an archive, named by number, languages and revision', async () => {
    const folder = ownFolder();
    await type(folder, ['demo-archive', 'demo.borefolio']);
    const args = ['paper', 'committee', 'demo.borefolio', '--language', 'fr,en', '-o', 'out/'];
    await type(folder, args);
    const names = readdirSync(path.join(folder, 'out'));
    expect(names).toContain('KV-25-011 committee fr-en rev 1.pdf');
    expect(names).toHaveLength(8);
  });

  it.each([
    ['three languages', ['--language', 'en,fr,pt']],
    ['a language twice', ['--language', 'fr,fr']],
    ['one that it does not speak', ['--language', 'xx']],
    ['A3 for one language', ['--paper', 'A3']],
    ['another size', ['--paper', 'A5', '--language', 'fr,en']],
  ])('refuses %s with a sentence', async (_, args) => {
    const said = await type(ownFolder(), ['paper', 'committee', record, ...args, '-o', 'x.pdf']);
    expect(said.code).toBe(2);
  });
});
