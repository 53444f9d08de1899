import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { openArchive } from '../../electron/archive/open.ts';
import { valueOf } from '../electron/archive/sample.ts';

/** The program as a process of its own. */
export interface Running {
  readonly url: string;
  /** Ends it as a pulled plug would: it is asked nothing and told nothing. */
  kill(): Promise<void>;
}

async function firstLine({ stdout }: ChildProcess): Promise<string> {
  let said = '';
  for await (const chunk of stdout!) {
    said += String(chunk);
    if (said.includes('\n')) return said.trim();
  }
  throw new Error(`The program ended before it said where it is: ${said}`);
}

export async function run(file: string, pageFolder: string): Promise<Running> {
  const script = path.join(import.meta.dirname, 'serves.ts');
  const stdio = ['ignore', 'pipe', 'inherit'] as const;
  const child = spawn(process.execPath, [script, file, pageFolder], { stdio: [...stdio] });
  const ended = once(child, 'close');
  const url = await firstLine(child);
  return {
    url,
    async kill() {
      child.kill('SIGKILL');
      await ended;
    },
  };
}

/** A well open in a window of its own, with its chapter of what it is called in front. */
export async function openAt(browser: Browser, url: string, number: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  await page.goto(url);
  await page.getByRole('button', { name: number }).click();
  await page.getByRole('tab', { name: 'Well', exact: true }).click();
  return page;
}

/** What the file holds of a well, read past the program that has it open. */
export function onDisk(file: string, number: string) {
  const world = { now: () => new Date().toISOString(), mustExist: true };
  const archive = valueOf(openArchive(file, world));
  try {
    const row = valueOf(archive.list()).find((one) => one.number === number)!;
    const working = valueOf(archive.working(row.id));
    return { ...working, revision: row.revision, check: valueOf(archive.check()) };
  } finally {
    archive.close();
  }
}
