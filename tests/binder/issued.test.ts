import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { BinderProgress, BinderWish } from '../../core/contract/binderShape.ts';
import { usualBinder } from '../../core/contract/usualBinder.ts';
import type { Archive } from '../../electron/archive/archive.ts';
import { openArchive } from '../../electron/archive/open.ts';
import { makeBinder } from '../../electron/binder/makeBinder.ts';
import { sha256Hex } from '../../electron/seal/hash.ts';
import { readSeals } from '../../electron/seal/readSeals.ts';
import { sealPdf } from '../../electron/seal/sealPdf.ts';
import { well } from '../demo-data/wells.ts';
import { valueOf } from '../electron/archive/sample.ts';
import { detailsOf, paper, signerCalled } from '../electron/seal/sealed.ts';

const top = mkdtempSync(path.join(os.tmpdir(), 'borefolio-issued-'));
const madeAt = '2026-02-01T09:30:00.000Z';
const name = 'shallow-direct-action-9m';
const file = `${name}.json`;
const fileName = 'KV-25-019 as-built A4 rev 1.pdf';
const wish: BinderWish = { ...usualBinder('Wells', 'en'), withIssued: true };
let archive: Archive;
let sealed: Uint8Array;

function issue(of: string, named: string, pdf: Uint8Array) {
  return valueOf(
    archive.issues.add({
      ...{ wellId: of, revision: 1, paper: 'as-built A4', languages: 'en', fileName: named },
      ...{ recordHash: 'ab'.repeat(32), freeMarks: [], pdf },
    }),
  );
}

beforeAll(async () => {
  archive = valueOf(openArchive(path.join(top, 'wells.borefolio'), { now: () => madeAt }));
  valueOf(archive.create(name, well(file)));
  valueOf(archive.create('bare', { schemaVersion: 1, identity: { number: 'Z-1' } }));
  const pdf = paper();
  sealed = valueOf(sealPdf(pdf, await signerCalled('Délio Kalvāro'), detailsOf(0)));
  issue(name, fileName, pdf);
  valueOf(archive.issues.seal(name, 1, sealed));
  issue(name, fileName.toUpperCase(), pdf);
  issue('bare', '../../up.pdf', pdf);
});

afterAll(() => {
  archive.close();
  rmSync(top, { recursive: true });
});

const made = async (folder: string, asked = wish) => {
  const told: BinderProgress['stage'][] = [];
  const binder = await makeBinder({
    archive,
    wish: asked,
    madeAt,
    workers: 1,
    folder: path.join(top, folder, 'work'),
    issuedFolder: path.join(top, folder, 'wells-issued'),
    fileOf: () => path.join(top, folder, 'wells.pdf'),
    onProgress: ({ stage }) => void told.push(stage),
    signal: new AbortController().signal,
  });
  return { ...valueOf(binder), told };
};

const inFolder = (folder: string, file: string) =>
  new Uint8Array(readFileSync(path.join(top, folder, 'wells-issued', file)));

async function textOf(folder: string): Promise<string> {
  const data = new Uint8Array(readFileSync(path.join(top, folder, 'wells.pdf')));
  const read = await getDocument({ data }).promise;
  const texts: string[] = [];
  for (let page = 1; page <= read.numPages; page += 1) {
    const { items } = await (await read.getPage(page)).getTextContent();
    texts.push(...items.map((one) => ('str' in one ? one.str : '')));
  }
  return texts.join(' ');
}

it('issued papers are copied beside the volumes as they are, with their hashes', async () => {
  const { issued, told } = await made('copied');
  expect(issued).toEqual({ folder: 'wells-issued', files: 3 });
  expect(told.at(-1)).toBe('copy');
  const copied = inFolder('copied', fileName);
  expect(Buffer.compare(copied, sealed)).toBe(0);
  expect(readSeals(copied)).toMatchObject({ state: 'whole', seals: [{ name: 'Délio Kalvāro' }] });
  const files = readdirSync(path.join(top, 'copied', 'wells-issued')).sort();
  expect(files).toHaveLength(4);
  expect(files.filter((file) => file.includes(' (2)'))).toHaveLength(1);
  expect(readdirSync(path.join(top, 'copied')).sort()).toEqual(['wells-issued', 'wells.pdf']);
  const sums = Buffer.from(inFolder('copied', 'SHA256SUMS')).toString().trim().split('\n');
  for (const line of sums) {
    const [sum, file] = line.split('  ');
    expect(sum).toBe(sha256Hex(inFolder('copied', file!)));
  }
  expect(sums).toHaveLength(3);
});

it('the binder lists them with who signed, and the folder', async () => {
  const text = await textOf('copied');
  expect(text).toContain('Issued papers');
  expect(text).toMatch(/Délio Kalvāro, +supervisor/);
  expect(text).toContain('wells-issued');
  expect(text).toContain(sha256Hex(sealed).slice(0, 8));
});

it('they are listed and not copied where nobody asks for copies', async () => {
  const { issued } = await made('listed', usualBinder('Wells', 'en'));
  expect(issued).toBeUndefined();
  expect(existsSync(path.join(top, 'listed', 'wells-issued'))).toBe(false);
  expect(await textOf('listed')).toContain('Délio Kalvāro');
});

it('a binder of wells of which nothing was issued makes no folder', async () => {
  valueOf(archive.create('other', { schemaVersion: 1, identity: { number: 'Z-2' } }));
  const { issued } = await made('none', { ...wish, wells: { ids: ['other'] } });
  expect(issued).toEqual({ folder: 'wells-issued', files: 0 });
  expect(existsSync(path.join(top, 'none', 'wells-issued'))).toBe(false);
  expect(await textOf('none')).not.toContain('Issued papers');
});
