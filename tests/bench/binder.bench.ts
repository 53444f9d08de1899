import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { paintPdf } from '../../core/paint/pdf/paintPdf.ts';
import { deflate } from '../../electron/files/deflate.ts';
import { readFonts } from '../../electron/files/fonts.ts';
import { makeAsBuilt } from '../../electron/service/sheet.ts';
import { readDocument } from '../../electron/service/stored.ts';
import { withChromium } from './binder/withChromium.ts';
import { withPdfkit } from './binder/withPdfkit.ts';
import { joinDrawings } from '../../core/drawing/papers/joined.ts';
import { shown } from './report.ts';
import { madeArchive } from './wells/madeArchive.ts';
import { madeWells } from './wells/madeWell.ts';

/** Pages that the rivals paint: Chromium needs minutes for all. */
const sampled = 100;
const sizes = [100, 1000] as const;

interface Measured {
  readonly pages: number;
  readonly layMs: number;
  readonly planMs: number;
  readonly paintMs: number;
  readonly bytes: number;
  readonly peakBytes: number;
}

async function binderOf(wells: number, workers: 1 | 2): Promise<Measured> {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-bench-'));
  try {
    const archive = await madeArchive(path.join(tmpdir(), 'borefolio-bench-wells'), wells);
    const script = path.join(import.meta.dirname, 'binder/runBinder.ts');
    const args = [script, archive, folder, String(workers)];
    const { stdout } = await promisify(execFile)(process.execPath, args);
    return JSON.parse(stdout) as Measured;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function binderRow(name: string, measured: Measured): string {
  const { pages, layMs, planMs, paintMs, bytes, peakBytes } = measured;
  const aPage = [layMs, planMs + paintMs, layMs + planMs + paintMs].map((ms) => shown(ms / pages));
  const cells = [name, pages, ...aPage, shown(bytes / pages / 1000), shown(peakBytes / 2 ** 20)];
  return `| ${cells.join(' | ')} |`;
}

/** Drawings of made wells with so many pages together. */
function sample() {
  const fonts = readFonts();
  const drawings: ReturnType<typeof makeAsBuilt>['drawing'][] = [];
  let pages = 0;
  for (const { document } of madeWells(sampled)) {
    const read = readDocument(document);
    if (!read.ok) throw new Error(read.error.sentence);
    const made = { paper: 'A4', fonts, madeAt: '2026-01-15T08:00:00Z' } as const;
    const { drawing } = makeAsBuilt(read.value.record, made);
    drawings.push(drawing);
    pages += drawing.pages.length;
    if (pages >= sampled) break;
  }
  return { fonts, drawings, pages };
}

async function timed<T>(run: () => T | Promise<T>): Promise<{ ms: number; value: T }> {
  const start = performance.now();
  const value = await run();
  return { ms: performance.now() - start, value };
}

async function rivals(): Promise<string[]> {
  const { fonts, drawings, pages } = sample();
  const about = { title: 'Bench', subject: '', language: 'en', madeAt: '2026-01-15T08:00:00Z' };
  const joined = joinDrawings(drawings, { ...about, paperId: '0'.repeat(32) });
  const own = await timed(() => paintPdf(joined, fonts.files, { deflate }).length);
  const pdfkit = await timed(() => withPdfkit([joined], fonts.files));
  const chromium = await withChromium(drawings, fonts);
  const row = (name: string, ms: number, bytes: number) =>
    `| ${name} | ${shown(ms / own.ms)} | ${shown(ms / pages)} | ${shown(bytes / pages / 1000)} |`;
  return [
    row('the painter, one thread', own.ms, own.value),
    row('pdfkit 0.20.2, hatches as grey fields', pdfkit.ms, pdfkit.value),
    row('headless Chromium, printed from SVG', chromium.ms, chromium.bytes),
  ];
}

/** The part of the report, in Markdown. */
export async function part(): Promise<string> {
  const rows: string[] = [];
  for (const wells of sizes)
    for (const workers of [1, 2] as const)
      rows.push(binderRow(`${wells} wells, ${workers} at once`, await binderOf(wells, workers)));
  return [
    '## Binders',
    '',
    'As-built drawings of made wells with the binder’s own pages, volumes of 250 pages at most. Laying holds the analysis of every pumping test; painting holds the planning and the start of a worker a volume. Memory is of the whole process, threads within.',
    '',
    '| | pages | laying, ms a page | painting, ms a page | both | KB a page | peak, MiB |',
    '|---|---|---|---|---|---|---|',
    ...rows,
    '',
    `The same ${sampled} pages or a few more, laid before, painted once by each in this run:`,
    '',
    '| | ratio | ms a page | KB a page |',
    '|---|---|---|---|',
    ...(await rivals()),
  ].join('\n');
}
