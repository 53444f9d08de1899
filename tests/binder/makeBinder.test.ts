import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, utimesSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { BinderProgress, BinderWish } from '../../core/contract/binderShape.ts';
import { usualBinder } from '../../core/contract/usualBinder.ts';
import { openArchive } from '../../electron/archive/open.ts';
import type { Archive } from '../../electron/archive/archive.ts';
import { makeBinder } from '../../electron/binder/makeBinder.ts';
import { volumeFileName } from '../../electron/binder/volumeFileName.ts';
import { templateText } from '../../electron/service/ownTemplates.ts';
import { fileNames, well } from '../demo-data/wells.ts';
import { valueOf } from '../electron/archive/sample.ts';
import { complaintsAbout } from '../reading/tools.ts';

const top = mkdtempSync(path.join(os.tmpdir(), 'borefolio-binder-'));
const madeAt = '2026-02-01T09:30:00.000Z';
let archive: Archive;

const wish: BinderWish = {
  ...usualBinder('Wells of Kelumvara', 'en'),
  papers: [
    { kind: 'asBuilt', language: 'en' },
    { kind: 'committee', languages: ['fr'] },
  ],
  mostPages: 20,
};

interface Run {
  readonly folder: string;
  readonly signal?: AbortSignal;
  readonly wish?: BinderWish;
  readonly workers?: 1 | 2;
  readonly onProgress?: (progress: BinderProgress) => void;
  readonly madeAt?: string;
}

function make({ folder, ...run }: Run) {
  return makeBinder({
    archive,
    wish,
    madeAt,
    workers: 2,
    onProgress: () => undefined,
    signal: new AbortController().signal,
    ...run,
    folder: path.join(top, folder, 'work'),
    issuedFolder: path.join(top, folder, 'binder-issued'),
    fileOf: (volume, of) => path.join(top, folder, volumeFileName('binder', volume, of)),
  });
}

const pdfsIn = (folder: string) =>
  readdirSync(path.join(top, folder))
    .filter((name) => name.endsWith('.pdf'))
    .sort()
    .map((name) => new Uint8Array(readFileSync(path.join(top, folder, name))));

const sameBytes = (a: readonly Uint8Array[], b: readonly Uint8Array[]) =>
  a.length === b.length && a.every((pdf, at) => Buffer.compare(pdf, b[at]!) === 0);

const opened = (pdf: Uint8Array) => getDocument({ data: new Uint8Array(pdf) }).promise;

/** The text of each page. */
async function textsOf(pdf: Uint8Array): Promise<string[]> {
  const read = await opened(pdf);
  const texts: string[] = [];
  for (let page = 1; page <= read.numPages; page += 1) {
    const { items } = await (await read.getPage(page)).getTextContent();
    texts.push(items.map((one) => ('str' in one ? one.str : '')).join(' '));
  }
  return texts;
}

type Leads = readonly [{ readonly num: number; readonly gen: number }];

beforeAll(() => {
  archive = valueOf(openArchive(path.join(top, 'wells.borefolio'), { now: () => madeAt }));
  for (const name of fileNames.slice(0, 4)) valueOf(archive.create(name.slice(0, 60), well(name)));
  // A document that no version of the program wrote.
  valueOf(archive.create('odd', { schemaVersion: 9999, identity: { number: 'ODD-1' } }));
});

afterAll(() => {
  archive.close();
  rmSync(top, { recursive: true });
});

describe('a binder of the demo wells in small volumes', () => {
  let pdfs: Uint8Array[] = [];
  let texts: string[][] = [];
  const told: BinderProgress[] = [];

  beforeAll(async () => {
    const made = valueOf(await make({ folder: 'once', onProgress: (one) => told.push(one) }));
    pdfs = pdfsIn('once');
    texts = await Promise.all(pdfs.map(textsOf));
    expect(made.files.length).toBe(pdfs.length);
    expect(texts.flat().length).toBe(made.pages);
    expect(made.failed).toMatchObject([{ number: 'ODD-1' }]);
  });

  it('is sound in the eyes of two other programs, volume by volume', () => {
    expect(pdfs.length).toBeGreaterThan(1);
    for (const pdf of pdfs) expect(complaintsAbout(pdf)).toBe('');
  });

  it('says on every page which of how many it is, as viewers name it', async () => {
    for (const [at, pdf] of pdfs.entries()) {
      const labels = (await (await opened(pdf)).getPageLabels())!;
      labels.forEach((label, index) => {
        const text = texts[at]![index]!;
        if (index === 0 || text === '') return;
        expect(text).toContain(`Volume ${at + 1} of ${pdfs.length} · Page ${label} of `);
      });
    }
  });

  it('counts pages before the wells in roman numbers and names later covers', async () => {
    const labels = await Promise.all(pdfs.map(async (pdf) => (await opened(pdf)).getPageLabels()));
    expect(labels[0]!.slice(0, 4)).toEqual(['i', 'ii', 'iii', 'iv']);
    expect(labels.flat()).toContain('1');
    expect(labels[1]![0]).toBe('Cover');
  });

  it('says whose it is and of which revision on every page of a well', () => {
    const ofWells = texts.flat().filter((text) => text.includes('revision 1'));
    const { length } = texts.flat().filter((text) => text.includes('Sheet'));
    expect(ofWells.length).toBeGreaterThanOrEqual(length);
    for (const text of ofWells) expect(text).toMatch(/\S+ · (.* · )?revision 1/);
  });

  it('leads by bookmarks to the pages of the wells', async () => {
    const read = await opened(pdfs[1]!);
    const districts = (await read.getOutline()).filter(({ items }) => items.length > 0);
    const marks = districts.flatMap(({ items }) => items) as { title: string; dest: Leads }[];
    expect(marks.length).toBeGreaterThan(0);
    for (const { title, dest } of marks)
      expect(texts[1]![await read.getPageIndex(dest[0])]).toContain(title.split(' – ')[0]);
  });

  it('leads by links to pages of the same volume, which the index says', async () => {
    const read = await opened(pdfs[0]!);
    const labels = (await read.getPageLabels())!;
    let links = 0;
    for (const [at, text] of texts[0]!.entries()) {
      if (!/Contents|Index by/.test(text)) continue;
      for (const one of await (await read.getPage(at + 1)).getAnnotations()) {
        const { dest } = one as { dest?: Leads };
        if (!dest) continue;
        links += 1;
        expect(text).toContain(`1/${labels[await read.getPageIndex(dest[0])]}`);
      }
    }
    expect(links).toBeGreaterThan(5);
  });

  it('has a page that says why in the place of papers that could not be made', () => {
    const why = texts.flat().filter((text) => text.includes('papers of this well could not be'));
    expect(why).toHaveLength(1);
    expect(why[0]).toContain('ODD-1');
  });

  it('tells how far it is, stage by stage, to the end', () => {
    expect([...new Set(told.map(({ stage }) => stage))]).toEqual(['lay', 'plan', 'paint']);
    expect(told.filter(({ stage }) => stage === 'lay').at(-1)).toMatchObject({ done: 5, of: 5 });
    expect(told.at(-1)!.done).toBe(told.at(-1)!.of);
  });

  it('leaves nothing but its volumes', () => {
    expect(readdirSync(path.join(top, 'once')).every((name) => name.endsWith('.pdf'))).toBe(true);
  });

  it('has the same bytes when it is made again, by one worker too', async () => {
    valueOf(await make({ folder: 'again', workers: 1 }));
    expect(sameBytes(pdfsIn('again'), pdfs)).toBe(true);
  });

  it('goes on after it was stopped, without laying again what is laid', async () => {
    const stop = new AbortController();
    const work = path.join(top, 'stopped', 'work');
    const first = await make({
      folder: 'stopped',
      workers: 1,
      signal: stop.signal,
      onProgress: ({ done }) => {
        if (done === 2) stop.abort();
      },
    });
    expect(first).toMatchObject({ ok: false, error: { code: 'binderStopped' } });
    const laid = readdirSync(work).filter((name) => name.endsWith('.well'));
    expect(laid.length).toBeGreaterThanOrEqual(2);
    const longAgo = new Date('2020-01-01T00:00:00Z');
    for (const name of laid) utimesSync(path.join(work, name), longAgo, longAgo);
    const seen: number[] = [];
    const later = '2027-01-01T00:00:00.000Z';
    const onProgress = ({ stage, done }: BinderProgress) => {
      if (stage !== 'lay') return;
      seen.push(done);
      for (const name of laid)
        expect(statSync(path.join(work, name)).mtime.getTime()).toBe(longAgo.getTime());
    };
    valueOf(await make({ folder: 'stopped', madeAt: later, onProgress }));
    expect(seen[0]).toBe(laid.length);
    expect(sameBytes(pdfsIn('stopped'), pdfs)).toBe(true);
  });
});

it('a wish is refused where no well fits', async () => {
  const nobody = { ...wish, wells: { filter: { districts: ['Nowhere'] } } };
  expect(await make({ folder: 'nobody', wish: nobody })).toMatchObject({
    error: { code: 'noWellsToBind' },
  });
});

describe('a binder of an archive with a template', () => {
  const template = {
    name: ['Kelumvara Water Office'],
    address: ['12 Long Quay'],
    logos: [],
    labels: {},
    disclaimer: 'Drawn from reports.',
  };
  const two = { ...wish, wells: { ids: fileNames.slice(0, 2).map((name) => name.slice(0, 60)) } };
  const keysIn = (folder: string) =>
    readdirSync(path.join(top, folder, 'work')).filter((name) => name.endsWith('.well'));

  /** Stops when both wells are laid; gives the names of their files. */
  async function laidIn(folder: string) {
    const stop = new AbortController();
    await make({
      folder,
      wish: two,
      signal: stop.signal,
      onProgress: ({ done }) => {
        if (done === 2) stop.abort();
      },
    });
    return keysIn(folder);
  }

  afterAll(() => valueOf(archive.templates.remove('office')));

  it('has it on the cover and on each page of the wells, and lays anew what was laid without', async () => {
    const before = await laidIn('headed');
    valueOf(archive.templates.put('office', templateText(template)));
    const after = await laidIn('headed');
    expect(before).toHaveLength(2);
    expect(after).toEqual(expect.arrayContaining(before));
    expect(after).toHaveLength(4);
    valueOf(await make({ folder: 'headed', wish: two }));
    const texts = (await Promise.all(pdfsIn('headed').map(textsOf))).flat();
    expect(texts[0]).toContain('Kelumvara Water Office');
    expect(texts[0]).toContain('Drawn from reports.');
    const ofWells = texts.filter((text) => text.includes('revision 1'));
    expect(ofWells.length).toBeGreaterThan(3);
    for (const text of ofWells) expect(text).toContain('Kelumvara Water Office');
  });

  it('is refused where the template cannot be read', async () => {
    valueOf(archive.templates.put('office', '{}'));
    expect(await make({ folder: 'unread', wish: two })).toMatchObject({
      error: { code: 'templateUnread' },
    });
  });
});
