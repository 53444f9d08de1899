import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { rmSync } from 'node:fs';
import path from 'node:path';
import { promisify } from 'node:util';
import { ok, refused, type Result } from '../../core/base/result.ts';
import type { PrinterRow } from '../../core/contract/printingShape.ts';
import type { Printing, PrintJob } from './printJob.ts';

const run = promisify(execFile);

/** Words of a system program in plain letters; empty where the system has none of that name. */
async function saidBy(program: string, words: readonly string[]): Promise<string> {
  try {
    const { stdout } = await run(program, words, { env: { ...process.env, LC_ALL: 'C' } });
    return stdout;
  } catch {
    return '';
  }
}

/** Printers of CUPS. Windows has none of its programs, so there the viewer prints. */
async function cupsPrinters(): Promise<PrinterRow[]> {
  const [all, usual] = await Promise.all([saidBy('lpstat', ['-e']), saidBy('lpstat', ['-d'])]);
  const usualName = /destination: (\S+)/.exec(usual)?.[1];
  const names = all.split('\n').filter((name) => /^[^\s/-][^\s/]*$/.test(name));
  return names.map((name) => ({ name, usual: name === usualName }));
}

/** A name that every system takes and no program takes for an option. */
function plainName(fileName: string): string {
  return (
    path
      .basename(fileName)
      .replace(/[\\/:*?"<>|\p{Cc}]+/gu, '-')
      .replace(/^[-.]+/, '') || 'paper.pdf'
  );
}

/** Folders of files that viewers may still have open; gone when the program ends. */
const lying = new Set<string>();

/** What printing takes of its host. */
export interface PrintingWorld {
  /** The folder for files that pass. */
  readonly temporary: () => string;
  /** Shows a file in the system's program for it; gives what went wrong, or nothing. */
  readonly openFile: (file: string) => Promise<string>;
}

/** Puts the PDF where only this person reads it. */
async function laidDown(
  { fileName, pdf }: PrintJob,
  { temporary }: PrintingWorld,
): Promise<{ file: string; folder: string }> {
  const folder = await mkdtemp(path.join(temporary(), 'borefolio-print-'));
  lying.add(folder);
  const file = path.join(folder, plainName(fileName));
  await writeFile(file, pdf, { mode: 0o600 });
  return { file, folder };
}

async function takenAway(folder: string): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  lying.delete(folder);
}

function printerRefused(thrown: unknown): Result<never> {
  const { stderr = '' } = thrown as { stderr?: string };
  const reason = stderr.trim() || String(thrown);
  return refused('printerRefused', `The printer did not take the PDF: ${reason}`);
}

/** The print system keeps a copy of its own, so the file goes as soon as it was taken. */
async function printOn(
  job: PrintJob,
  printer: string,
  world: PrintingWorld,
): Promise<Result<null>> {
  const { file, folder } = await laidDown(job, world);
  try {
    const options = ['-d', printer, '-t', plainName(job.fileName), '-o', 'print-scaling=none'];
    await run('lp', [...options, '--', file]);
    return ok(null);
  } catch (thrown) {
    return printerRefused(thrown);
  } finally {
    await takenAway(folder);
  }
}

async function showInViewer(job: PrintJob, world: PrintingWorld): Promise<Result<null>> {
  const { file, folder } = await laidDown(job, world);
  const trouble = await world.openFile(file);
  if (trouble === '') return ok(null);
  await takenAway(folder);
  return refused('noViewer', `No program of this computer showed the PDF: ${trouble}`);
}

/**
 * Printing by the system's own print program or its viewer for PDFs: no window of ours ever loads a
 * file.
 */
export function systemPrinting(world: PrintingWorld): Printing {
  return {
    printers: cupsPrinters,
    print: (job, printer) => printOn(job, printer, world),
    show: (job) => showInViewer(job, world),
  };
}

/** Takes away what viewers were shown; for the end of the program. One still in use stays. */
export function forgetPrints(): void {
  for (const folder of lying) {
    try {
      rmSync(folder, { recursive: true, force: true });
    } catch {
      continue;
    }
  }
  lying.clear();
}
