import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { openArchive } from '../../../electron/archive/open.ts';
import { valueOf } from '../archive/sample.ts';
import { jpegOf } from '../../pictures/jpeg.ts';
import { hashOf } from '../../pictures/photos.ts';
import { openPdf } from '../../reading/pdf.ts';
import { ownFolder, putRecord, type } from './typed.ts';

const picture = jpegOf(64, 48, (x, y) => [x * 4, y * 5, 90]);
const size = { width: 64, height: 48 };

/** An archive with one well that has a photo which it holds, and one which it does not. */
function archiveWithPhotos(folder: string): string {
  const opened = openArchive(path.join(folder, 'a.borefolio'), { now: () => '2026-03-01' });
  const archive = valueOf(opened);
  const copy = { ...size, mediaType: 'image/jpeg', bytes: picture } as const;
  const hash = valueOf(archive.attach({ mediaType: 'image/jpeg', bytes: picture, copy }));
  const photos = [
    { hash, caption: 'The pump' },
    { hash: hashOf(9), file: 'lost.jpg' },
  ];
  valueOf(archive.create('w', { schemaVersion: 1, identity: { number: 'KA-1' }, photos }));
  archive.close();
  return 'a.borefolio';
}

async function lastPage(file: string): Promise<string> {
  const pdf = await openPdf(new Uint8Array(readFileSync(file)));
  const { items } = await (await pdf.getPage(pdf.numPages)).getTextContent();
  return items.map((item) => ('str' in item ? item.str : '')).join(' ');
}

describe('borefolio paper as-built on wells with photos', () => {
  it('prints those that the archive holds and says how many it does not', async () => {
    const folder = ownFolder();
    const archive = archiveWithPhotos(folder);
    const { code, err } = await type(folder, ['paper', 'as-built', archive, '-o', 'a.pdf']);
    expect(code).toBe(0);
    expect(err).toEqual([
      'KA-1: one photo is not at hand and stands on the sheet as an empty frame. Print the well from the archive that holds its photos.',
    ]);
    expect(readFileSync(path.join(folder, 'a.pdf')).indexOf(picture)).toBeGreaterThan(0);
    const words = await lastPage(path.join(folder, 'a.pdf'));
    expect(words).toContain('The pump');
    expect(words).toContain('This picture is not at hand');
    expect(words).toContain('lost.jpg');
  });

  it('says of a bare record that its photos are not at hand', async () => {
    const folder = ownFolder();
    const photos = [{ hash: hashOf(1) }, { hash: hashOf(2) }, { hash: hashOf(3), print: false }];
    const args = ['paper', 'as-built', putRecord(folder, { photos }), '-o', 'sheet.pdf'];
    const { code, err } = await type(folder, args);
    expect(code).toBe(0);
    expect(err).toEqual([
      expect.stringMatching(/^record\.json: 2 photos are not at hand and stand /),
    ]);
    expect(await lastPage(path.join(folder, 'sheet.pdf'))).toContain('Photo 2');
  });

  it('says nothing of photos where there are none', async () => {
    const folder = ownFolder();
    const args = ['paper', 'as-built', putRecord(folder, {}), '-o', 'sheet.pdf'];
    expect((await type(folder, args)).err).toEqual([]);
  });
});

describe('borefolio paper committee on wells with pictures of marks', () => {
  it('prints the picture with which somebody signed', async () => {
    const folder = ownFolder();
    const opened = openArchive(path.join(folder, 'a.borefolio'), { now: () => '2026-03-01' });
    const archive = valueOf(opened);
    const copy = { ...size, mediaType: 'image/jpeg', bytes: picture } as const;
    const hash = valueOf(archive.attach({ mediaType: 'image/jpeg', bytes: picture, copy }));
    const marks = [{ role: 'committee', name: 'Natásia Relembo', kind: 'image', hash }];
    valueOf(archive.create('w', { schemaVersion: 1, identity: { number: 'KA-1' }, marks }));
    archive.close();
    await type(folder, ['paper', 'committee', 'a.borefolio', '-o', 'c.pdf']);
    expect(readFileSync(path.join(folder, 'c.pdf')).indexOf(picture)).toBeGreaterThan(0);
  });
});
