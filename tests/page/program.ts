import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium, type Browser, type Page } from 'playwright-core';
import { build, type Plugin } from 'vite';
import { bindingDesk } from '../../electron/binder/bindingDesk.ts';
import { isBuilt } from '../../electron/launch/build.mjs';
import { startLoopback, type Loopback } from '../../electron/loopback/server.ts';
import { openService } from '../../electron/service/openService.ts';
import type { Service } from '../../electron/service/service.ts';
import type { Archive } from '../../electron/archive/archive.ts';
import type { WellRecord } from '../../core/record/schema.ts';

const top = path.resolve(import.meta.dirname, '../..');

/** The program as its users have it, on an archive of the demo wells that ends with the test. */
export interface Program {
  readonly service: Service;
  readonly archive: Archive;
  readonly loopback: Loopback;
  readonly browser: Browser;
  /** Everything that the browser complained of since the start. */
  readonly complaints: readonly string[];
  /** A new window on the archive. */
  newPage(width?: number, height?: number): Promise<Page>;
  close(): Promise<void>;
}

export function demoRecords(): WellRecord[] {
  const folder = path.join(top, 'demo-data');
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => JSON.parse(readFileSync(path.join(folder, name), 'utf8')) as WellRecord);
}

/** Builds the page into a folder unless it is built as its sources stand; gives where it is. */
export async function builtPage(folder: string, plugins: Plugin[] = []): Promise<string> {
  if (plugins.length === 0 && isBuilt()) return path.join(top, 'dist/page');
  const outDir = path.join(folder, 'page');
  const configFile = path.join(top, 'vite.config.ts');
  await build({
    configFile,
    root: path.join(top, 'renderer'),
    logLevel: 'error',
    plugins,
    build: { outDir },
  });
  return outDir;
}

async function openArchiveOf(folder: string, records: readonly WellRecord[]) {
  const world = {
    clock: () => new Date().toISOString(),
    newId: () => crypto.randomUUID(),
    binding: bindingDesk(),
  };
  const opened = openService(path.join(folder, 'Kelumvara 2025–2026.borefolio'), world);
  if (!opened.ok) throw new Error(opened.error.sentence);
  for (const record of records) {
    const answer = await opened.value.service.call('wells.create', { record });
    if (!answer.ok) throw new Error(answer.error.sentence);
  }
  return opened.value;
}

/** Chromium as root runs without its sandbox: in tests only. */
export const launch = (args: readonly string[] = []) =>
  chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', ...args] });

function listen(page: Page, complaints: string[]) {
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('requestfailed', (request) => {
    // A window that closes drops its stream of events; that is no failure.
    if (!request.url().endsWith('/events')) complaints.push(`failed: ${request.url()}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
}

export async function startProgram(
  records = demoRecords(),
  { plugins, browserArgs }: { plugins?: Plugin[]; browserArgs?: readonly string[] } = {},
): Promise<Program> {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-page-'));
  const opened = await openArchiveOf(folder, records);
  const pageFolder = await builtPage(folder, plugins);
  const { service, archive } = opened;
  const loopback = await startLoopback({ service, pageFolder });
  const browser = await launch(browserArgs);
  const complaints: string[] = [];
  return {
    service,
    archive,
    loopback,
    browser,
    complaints,
    async newPage(width = 1280, height = 800) {
      const context = await browser.newContext({
        viewport: { width, height },
        acceptDownloads: true,
      });
      const page = await context.newPage();
      listen(page, complaints);
      await page.goto(loopback.newUrl());
      return page;
    },
    async close() {
      await browser.close();
      await loopback.close();
      await opened.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
