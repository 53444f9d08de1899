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
import { median } from './trial.ts';
import { madeArchive } from './wells/madeArchive.ts';
import { madeWells } from './wells/madeWell.ts';

/** Pages that the rivals paint: Chromium needs minutes for all. */
const sampled = 100;
/** Rounds of the rivals in turn, but for Chromium, which has one. */
const rounds = 3;
/**
 * Wells and workers of each binder: a small one; about 1 000 and 5 000 pages, between which memory
 * should stay; and the 1 000 wells that speed is wanted for.
 */
const binders = [
  [100, 1],
  [100, 2],
  [220, 1],
  [220, 2],
  [1000, 1],
  [1000, 2],
  [1100, 2],
] as const;

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

function binderRow(name: string, measured: Measured, chromiumMs: number): string {
  const { pages, layMs, planMs, paintMs, bytes, peakBytes } = measured;
  const whole = (layMs + planMs + paintMs) / pages;
  const times = [layMs / pages, (planMs + paintMs) / pages, whole, chromiumMs / whole].map(shown);
  const sizes = [bytes / pages / 1000, peakBytes / 2 ** 20].map(shown);
  return `| ${[name, pages, ...times, ...sizes].join(' | ')} |`;
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

interface Painted {
  readonly ms: number;
  readonly bytes: number;
}

async function timed(run: () => number | Promise<number>): Promise<Painted> {
  const start = performance.now();
  const bytes = await run();
  return { ms: performance.now() - start, bytes };
}

const middle = (painted: readonly Painted[]): Painted => ({
  ms: median(painted.map(({ ms }) => ms)),
  bytes: painted[0]!.bytes,
});

/** The same pages painted by each: milliseconds and bytes a page. */
async function rivals() {
  const { fonts, drawings, pages } = sample();
  const about = { title: 'Bench', subject: '', language: 'en', madeAt: '2026-01-15T08:00:00Z' };
  const joined = joinDrawings(drawings, { ...about, paperId: '0'.repeat(32) });
  const own: Painted[] = [];
  const pdfkit: Painted[] = [];
  for (let round = 0; round < rounds; round += 1) {
    own.push(await timed(() => paintPdf(joined, fonts.files, { deflate }).length));
    pdfkit.push(await timed(() => withPdfkit([joined], fonts.files)));
  }
  const chromium = await withChromium(drawings, fonts);
  const aPage = ({ ms, bytes }: Painted) => ({ ms: ms / pages, bytes: bytes / pages });
  return { own: aPage(middle(own)), pdfkit: aPage(middle(pdfkit)), chromium: aPage(chromium) };
}

/** The part of the report, in Markdown. */
export async function part(): Promise<string> {
  const { own, pdfkit, chromium } = await rivals();
  const row = (name: string, { ms, bytes }: Painted) =>
    `| ${name} | ${shown(ms / own.ms)} | ${shown(ms)} | ${shown(bytes / 1000)} |`;
  const rows: string[] = [];
  for (const [wells, workers] of binders) {
    const name = `${wells} wells, ${workers === 1 ? 'one worker' : 'two workers'}`;
    rows.push(binderRow(name, await binderOf(wells, workers), chromium.ms));
  }
  return [
    '## Binders',
    '',
    'As-built drawings of made wells with the binder’s own pages, volumes of 250 pages at most. Laying holds reading, judging and the analysis of every pumping test; painting holds the planning and what lies between the two; each holds the start of its workers. Chromium’s print of the sample below is set against the whole, laying and all, of which it has nothing to do. Memory is the most that the process held at any time: it is the only one, workers are threads within.',
    '',
    '| | pages | laying, ms a page | painting, ms a page | whole | Chromium takes times as long | KB a page | peak, MiB |',
    '|---|---|---|---|---|---|---|---|',
    ...rows,
    '',
    `The same ${sampled} pages or a few more, laid before, painted by each in this run: Chromium once, the others in turn, the middle of ${rounds} rounds:`,
    '',
    '| | ratio | ms a page | KB a page |',
    '|---|---|---|---|',
    row('the painter, one thread', own),
    row('pdfkit 0.20.2, hatches as grey fields', pdfkit),
    row('headless Chromium, printed from SVG', chromium),
  ].join('\n');
}
