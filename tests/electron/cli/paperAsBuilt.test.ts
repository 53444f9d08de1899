import { hash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { openArchive } from '../../../electron/archive/open.ts';
import { openPdf } from '../../reading/pdf.ts';
import { pdfObjects } from '../../reading/pdfObjects.ts';
import { countingWorld, retype, valueOf } from '../archive/sample.ts';
import { ownFolder, putRecord, type } from './typed.ts';

const demo = (name: string) => path.resolve(import.meta.dirname, '../../../demo-data', name);
const isPdf = (file: string) => readFileSync(file).subarray(0, 5).toString() === '%PDF-';

async function demoArchive(folder: string) {
  await type(folder, ['demo-archive', 'demo.borefolio']);
  return 'demo.borefolio';
}

/** The bytes of the one file within a PDF. */
function attachedTo(pdf: Uint8Array): Buffer {
  const { all } = pdfObjects(pdf);
  const files = all.filter(({ value }) => JSON.stringify(value).includes('/EmbeddedFile"'));
  expect(files).toHaveLength(1);
  return files[0]!.stream!;
}

describe('borefolio paper as-built', () => {
  it('writes a record’s sheet as a PDF, the same bytes each time', async () => {
    const folder = ownFolder();
    const record = demo('hand-drilled-32m.json');
    const first = await type(folder, ['paper', 'as-built', record, '-o', 'one.pdf']);
    await type(folder, ['paper', 'as-built', record, '-o', 'two.pdf']);
    expect(first).toMatchObject({ code: 0, out: ['Written: one.pdf'] });
    expect(isPdf(path.join(folder, 'one.pdf'))).toBe(true);
    const [one, two] = ['one.pdf', 'two.pdf'].map((name) => readFileSync(path.join(folder, name)));
    expect(one!.equals(two!)).toBe(true);
  });

  it('puts the record into the PDF when asked, so that its bytes have the hash that the paper names', async () => {
    const folder = ownFolder();
    const args = ['paper', 'as-built', demo('dry-hole-26m.json'), '-o', 'sheet.pdf'];
    await type(folder, [...args, '--attach-record']);
    const pdf = readFileSync(path.join(folder, 'sheet.pdf'));
    const attached = attachedTo(pdf);
    expect(JSON.parse(attached.toString())).toMatchObject({ schemaVersion: 1 });
    expect(pdf.includes(`<bfpaper:recordHash>${hash('sha256', attached)}<`)).toBe(true);
    await type(folder, args);
    expect(readFileSync(path.join(folder, 'sheet.pdf')).includes('/EmbeddedFiles')).toBe(false);
  });

  it('writes an SVG a page', async () => {
    const folder = ownFolder();
    const record = demo('hand-drilled-32m.json');
    const { out } = await type(folder, ['paper', 'as-built', record, '-o', 'sheet.svg']);
    const files = readdirSync(folder).sort();
    expect(files.length).toBeGreaterThan(0);
    expect(files).toEqual(
      files.length === 1 ? ['sheet.svg'] : files.map((_, at) => `sheet-${at + 1}.svg`),
    );
    expect(out).toHaveLength(files.length);
    for (const file of files) expect(readFileSync(path.join(folder, file), 'utf8')).toMatch(/<svg/);
  });

  it('takes A3 for a larger page', async () => {
    const folder = ownFolder();
    const record = demo('shallow-direct-action-9m.json');
    const write = (paper: string) =>
      type(folder, ['paper', 'as-built', record, '--paper', paper, '-o', `${paper}.svg`]);
    await write('A4');
    await write('a3');
    const viewBox = (name: string) => {
      const file = readdirSync(folder).find((one) => one.startsWith(name))!;
      return /viewBox="([^"]+)"/.exec(readFileSync(path.join(folder, file), 'utf8'))?.[1];
    };
    const [wide, high] = viewBox('a3')!.split(' ').slice(2).map(Number);
    expect([wide, high].sort()).toEqual([297, 420]);
    expect(viewBox('A4')!.split(' ').slice(2).map(Number).sort()).toEqual([210, 297]);
  });

  it('writes the sheet in the language asked for', async () => {
    const folder = ownFolder();
    const record = demo('shallow-direct-action-9m.json');
    const write = (...more: string[]) => type(folder, ['paper', 'as-built', record, ...more]);
    await write('--language', 'FR', '-o', 'fr.svg');
    await write('-o', 'en.svg');
    const read = (start: string) =>
      readdirSync(folder)
        .filter((name) => name.startsWith(start))
        .map((name) => readFileSync(path.join(folder, name), 'utf8'))
        .join('');
    expect(read('fr')).toContain('Légende');
    expect(read('en')).not.toContain('Légende');
  });

  it('names the languages when it is asked for another', async () => {
    const record = demo('shallow-direct-action-9m.json');
    const args = ['paper', 'as-built', record, '--language', 'de', '-o', 'sheet.pdf'];
    const { code, err } = await type(ownFolder(), args);
    expect(code).toBe(2);
    expect(err[0]).toBe('No sheet speaks de: --language en, fr, pt.');
  });

  it('finds a well of an archive by its number', async () => {
    const folder = ownFolder();
    const args = ['paper', 'as-built', await demoArchive(folder), '-o', 'sheet.pdf'];
    const { code } = await type(folder, [...args, '--well', 'KV-25-011']);
    expect(code).toBe(0);
    expect(isPdf(path.join(folder, 'sheet.pdf'))).toBe(true);
  });

  it('asks which well, and names those that are there', async () => {
    const folder = ownFolder();
    const args = ['paper', 'as-built', await demoArchive(folder), '-o', 'sheet.pdf'];
    const which = await type(folder, args);
    expect(which.code).toBe(2);
    expect(which.err[0]).toMatch(
      /^demo\.borefolio has \d+ wells: choose one with --well NUMBER .*KV-25-011/,
    );
    const wrong = await type(folder, [...args, '--well', 'KV-99']);
    expect(wrong.code).toBe(2);
    expect(wrong.err[0]).toContain('no well with the number KV-99');
  });

  it('writes a sheet for every well into a folder', async () => {
    const folder = ownFolder();
    const archive = await demoArchive(folder);
    const { out } = await type(folder, ['paper', 'as-built', archive, '-o', 'sheets/']);
    const wells = readdirSync(demo('')).filter((name) => name.endsWith('.json'));
    expect(readdirSync(path.join(folder, 'sheets'))).toHaveLength(wells.length);
    expect(out).toHaveLength(wells.length);
  });

  it('writes the sheets of all wells into one PDF when asked, and says what does not go with that', async () => {
    const folder = ownFolder();
    const archive = await demoArchive(folder);
    const args = ['paper', 'as-built', archive, '--all'];
    const { out } = await type(folder, [...args, '-o', 'all.pdf']);
    expect(out).toEqual(['Written: all.pdf']);
    await type(folder, ['paper', 'as-built', archive, '-o', 'each/']);
    const pages = async (file: string) =>
      (await openPdf(new Uint8Array(readFileSync(path.join(folder, file))))).numPages;
    const each = await Promise.all(
      readdirSync(path.join(folder, 'each')).map((name) => pages(`each/${name}`)),
    );
    expect(await pages('all.pdf')).toBe(each.reduce((sum, count) => sum + count));
    for (const ending of ['svg', 'dxf', 'png']) {
      const other = await type(folder, [...args, '-o', `all.${ending}`]);
      expect([other.code, other.err[0]]).toEqual([2, '--all makes one PDF: -o OUT.pdf.']);
    }
    const carrying = await type(folder, [...args, '--attach-record', '-o', 'all.pdf']);
    expect(carrying.code).toBe(2);
  });

  it('writes the sheet of a record with errors, says them and gives 1', async () => {
    const folder = ownFolder();
    const log = [
      { from: 0, to: 4, material: 'clay' },
      { from: 3, to: 6, material: 'sand' },
    ];
    const args = ['paper', 'as-built', putRecord(folder, { log }), '-o', 'sheet.pdf'];
    const { code, err } = await type(folder, args);
    expect(code).toBe(1);
    expect(err[0]).toMatch(/^record\.json: log\[1\]/);
    expect(isPdf(path.join(folder, 'sheet.pdf'))).toBe(true);
  });

  it.each([
    [['-o', 'sheet.docx'], 'ends in none of .pdf, .svg, .dxf and .png'],
    [['--dpi', '20', '-o', 'sheet.png'], '--dpi 20 is no whole number from 36 to 1200'],
    [[], 'Say where to write'],
    [['-o', 'sheet.pdf', '--paper', 'B5'], 'There is no paper B5'],
    [['-o', 'sheet.pdf', '--orientation', 'up'], 'No sheet lies up'],
    [['-o', 'sheet.pdf', '--columns', 'colour,tint'], 'There is no column tint'],
  ])('refuses %j as not understood', async (options, sentence) => {
    const folder = ownFolder();
    const args = ['paper', 'as-built', putRecord(folder, {}), ...options];
    const { code, err } = await type(folder, args);
    expect(code).toBe(2);
    expect(err.join()).toContain(sentence);
    expect(readdirSync(folder)).toEqual(['record.json']);
  });

  it('prints the newest revision, and says so where something was typed later', async () => {
    const folder = ownFolder();
    await demoArchive(folder);
    const archive = valueOf(openArchive(path.join(folder, 'demo.borefolio'), countingWorld()));
    const [row] = valueOf(archive.list('KV-25-011'));
    const { desk } = valueOf(archive.working(row!.id));
    valueOf(retype(archive, row!.id, { ...desk.record, notes: 'typed later' }));
    archive.close();
    const print = (number: string) =>
      type(folder, ['paper', 'as-built', 'demo.borefolio', '--well', number, '-o', 'out/']);
    const { out, err } = await print('KV-25-011');
    expect(out[0]).toContain('rev 1');
    expect(err).toContain(
      'KV-25-011: the sheet shows revision 1; what was typed later is not on it. Save the well in the program to make a revision of it.',
    );
    expect((await print('KV-25-014')).err.join()).not.toContain('what was typed later');
  });
});
