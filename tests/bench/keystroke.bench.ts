import path from 'node:path';
import type { WellRecord } from '../../core/record/schema.ts';
import { startProgram } from '../page/program.ts';
import { demoText } from './demoRecord.ts';
import { timedBuild } from './keystroke/timedBuild.ts';
import {
  clockMark,
  keystrokesOf,
  type Keystroke,
  type Span,
  type TraceEvent,
} from './keystroke/trace.ts';
import { typeEntries } from './keystroke/typing.ts';
import { centile, shown } from './report.ts';

const top = path.resolve(import.meta.dirname, '../..');
const categories = [
  'devtools.timeline',
  'disabled-by-default-devtools.timeline',
  'blink.user_timing',
  'disabled-by-default-devtools.timeline.frame',
];
/** Frames come as soon as they are ready, so that no wait for a display is measured. */
const browserArgs = ['--disable-frame-rate-limit', '--disable-gpu-vsync'];

async function measured(): Promise<Keystroke[]> {
  const record = JSON.parse(demoText) as WellRecord;
  const plugins = [timedBuild(top)];
  const program = await startProgram([record], { plugins, browserArgs });
  try {
    const page = await program.newPage(1440, 900);
    await page
      .getByText(record.identity?.number ?? '')
      .first()
      .click();
    await page.locator('#sheet text').first().waitFor();
    await typeEntries(page);
    await program.browser.startTracing(page, { categories });
    await page.evaluate((name) => performance.mark(name), clockMark);
    await typeEntries(page);
    const trace = JSON.parse(String(await program.browser.stopTracing())) as {
      traceEvents: TraceEvent[];
    };
    const spans = await page.evaluate(() => (globalThis as { spans?: Span[] }).spans ?? []);
    return keystrokesOf(trace.traceEvents, spans);
  } finally {
    await program.close();
  }
}

function row(name: string, times: readonly number[]): string {
  const cells = [0, 0.5, 0.95].map((share) => shown(centile(times, share)));
  return `| ${[name, ...cells].join(' | ')} |`;
}

/** The part of the report, in Markdown. */
export async function part(): Promise<string> {
  const keystrokes = await measured();
  const within = keystrokes.filter(({ sheetMs }) => sheetMs < 16).length / keystrokes.length;
  const steps = [...new Set(keystrokes.flatMap((one) => Object.keys(one.steps)))];
  return [
    '## From a key to the painted sheet',
    '',
    `Chromium, window of 1440 by 900, the well with sixty intervals, ${keystrokes.length} keystrokes in cells of its log at 130 ms each, traced. From the key's event to the frame that is shown, without the wait for a display (up to 17 ms more at 60 frames a second). ${Math.round(100 * within)} % of sheets were shown within 16 ms. The steps are on the page's main thread, but for the last; the rest of the page is the letter in its field, the row under the hand and the edges on the sheet, since cells of other rows are not asked; the browser's paint walks the many fields of the tables, each a layer of its own.`,
    '',
    '| ms | least | median | 95 % within |',
    '|---|---|---|---|',
    row(
      'until the letter is shown',
      keystrokes.map(({ letterMs }) => letterMs),
    ),
    row(
      'until the sheet is shown',
      keystrokes.map(({ sheetMs }) => sheetMs),
    ),
    ...steps.map((step) =>
      row(
        `– ${step}`,
        keystrokes.map((one) => one.steps[step] ?? 0),
      ),
    ),
  ].join('\n');
}
