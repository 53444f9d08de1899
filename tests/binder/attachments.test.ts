import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { BinderWish } from '../../core/contract/binderShape.ts';
import { usualBinder } from '../../core/contract/usualBinder.ts';
import type { Archive } from '../../electron/archive/archive.ts';
import { openArchive } from '../../electron/archive/open.ts';
import { makeBinder } from '../../electron/binder/makeBinder.ts';
import { well } from '../demo-data/wells.ts';
import { valueOf } from '../electron/archive/sample.ts';
import { jpegOf } from '../pictures/jpeg.ts';
import { complaintsAbout } from '../reading/tools.ts';

const top = mkdtempSync(path.join(os.tmpdir(), 'borefolio-attached-'));
const madeAt = '2026-02-01T09:30:00.000Z';
let archive: Archive;

beforeAll(() => {
  archive = valueOf(openArchive(path.join(top, 'wells.borefolio'), { now: () => madeAt }));
  const jpeg = jpegOf(160, 120, (x, y) => [x, y, 90]);
  const copy = { mediaType: 'image/jpeg', width: 160, height: 120, bytes: jpeg } as const;
  const photo = valueOf(archive.attach({ mediaType: 'image/jpeg', bytes: jpeg, copy }));
  const report = valueOf(
    archive.attach({ mediaType: 'application/pdf', bytes: Buffer.from('%PDF-1.7 a report') }),
  );
  const photos = [
    { hash: photo, file: 'pad.jpg', caption: 'The pad from the road' },
    { hash: report, file: 'report.pdf', mediaType: 'application/pdf', bytes: 17 } as const,
    { hash: 'e'.repeat(64), file: 'lost.pdf', mediaType: 'application/pdf' } as const,
  ];
  valueOf(archive.create('a', { ...well('shallow-direct-action-9m.json'), photos }));
  valueOf(archive.create('b', { schemaVersion: 1, identity: { number: 'Z-1' } }));
});

afterAll(() => {
  archive.close();
  rmSync(top, { recursive: true });
});

/** Texts of the pages that are of attachments, and the titles of all bookmarks. */
async function made(folder: string, more: Partial<BinderWish>) {
  const file = path.join(top, folder, 'wells.pdf');
  valueOf(
    await makeBinder({
      archive,
      wish: { ...usualBinder('Wells', 'en'), attachments: true, ...more },
      madeAt,
      workers: 1,
      folder: path.join(top, folder, 'work'),
      issuedFolder: path.join(top, folder, 'issued'),
      fileOf: () => file,
      onProgress: () => undefined,
      signal: new AbortController().signal,
    }),
  );
  const bytes = new Uint8Array(readFileSync(file));
  expect(complaintsAbout(bytes)).toBe('');
  const read = await getDocument({ data: new Uint8Array(bytes) }).promise;
  const texts: string[] = [];
  for (let page = 1; page <= read.numPages; page += 1) {
    const { items } = await (await read.getPage(page)).getTextContent();
    const text = items.map((one) => ('str' in one ? one.str : '')).join(' ');
    if (/(^| )Attachments +Attachments/.test(text)) texts.push(text);
  }
  const titles: string[] = [];
  const walk = (marks: readonly { title: string; items: readonly never[] }[]) => {
    for (const { title, items } of marks) {
      titles.push(title);
      walk(items);
    }
  };
  walk((await read.getOutline()) as never);
  return { texts, titles };
}

const committee = { kind: 'committee', languages: ['en'] } as const;

it('what the as-built drawing does not show is listed behind it, with well and revision', async () => {
  const { texts, titles } = await made('listed', {});
  expect(texts).toHaveLength(1);
  expect(texts[0]).toMatch(/report\.pdf .*0\.017 kB .*lost\.pdf/);
  expect(texts[0]).toMatch(/not in this +archive/);
  expect(texts[0]).not.toContain('The pad');
  expect(texts[0]).toContain('KV-26-009');
  expect(texts[0]).toContain('revision 1');
  expect(titles.filter((title) => title === 'Attachments')).toHaveLength(1);
});

it('pictures are shown where no as-built drawing is bound', async () => {
  const { texts } = await made('shown', { papers: [committee] });
  expect(texts).toHaveLength(1);
  expect(texts[0]).toContain('lost.pdf');
  expect(texts[0]).toContain('The pad from the road');
  expect(texts[0]).toContain('revision 1');
});

it('a binder of which nobody asks for attachments has none', async () => {
  const { texts, titles } = await made('none', { papers: [committee], attachments: false });
  expect(texts).toEqual([]);
  expect(titles).not.toContain('Attachments');
});
