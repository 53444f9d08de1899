/**
 * `npm run make:pictures`: the pictures in the documents, made by the program from the demo wells.
 * Needs pdftoppm (Debian: poppler-utils).
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { readFonts } from '../files/fonts.ts';
import { makeAsBuilt } from '../service/sheet.ts';
import { readDocument } from '../service/stored.ts';

const top = path.resolve(import.meta.dirname, '../..');
const pictures = path.join(top, 'docs/pictures');

/** Fine enough for the smallest letters, and still a small file. */
const dotsPerInch = 110;

/** A fixed moment, so that the same record gives the same picture. */
const madeAt = '2026-01-15T08:00:00Z';

/** The first page of a demo well's as-built sheet, as PNG. */
function drawPicture(record: string, picture: string): void {
  const read = readDocument(JSON.parse(readFileSync(path.join(top, 'demo-data', record), 'utf8')));
  if (!read.ok) throw new Error(read.error.sentence);
  const sheet = makeAsBuilt(read.value.record, { paper: 'A4', fonts: readFonts(), madeAt });
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-pictures-'));
  try {
    const pdf = path.join(folder, 'sheet.pdf');
    writeFileSync(pdf, sheet.pdf());
    const base = path.join(pictures, picture);
    const page = ['-f', '1', '-l', '1', '-singlefile', '-r', String(dotsPerInch)];
    execFileSync('pdftoppm', ['-png', ...page, pdf, base]);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

drawPicture('hand-drilled-32m.json', 'as-built');
