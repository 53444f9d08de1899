import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { findBrowser, type Machine } from './findBrowser.ts';

/** A program and its arguments, handed to the system as they are: no shell reads them. */
export interface Command {
  readonly program: string;
  readonly args: readonly string[];
}

/** How the page came to be seen. */
export interface OpenedPage {
  /** A window of its own, or a tab of the default browser, whose closing cannot be seen. */
  readonly how: 'window' | 'tab';
  /** When the window was closed; never for a tab. */
  readonly closed: Promise<void>;
  /** Closes the window; a tab is the user's and stays. */
  close(): void;
}

/** Opens an address as a window without tabs, apart from the user's own browsing. */
export function windowCommand(
  program: string,
  url: string,
  dataFolder: string,
  env: Machine['env'],
): Command {
  const args = [
    `--app=${url}`,
    `--user-data-dir=${dataFolder}`,
    '--window-size=1440,900',
    '--no-first-run',
    '--no-default-browser-check',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ];
  // Tests that run as the superuser cannot use the sandbox; nobody else goes without it.
  return { program, args: env['BOREFOLIO_TEST_NO_SANDBOX'] ? [...args, '--no-sandbox'] : args };
}

/** Opens an address or a file in the program that the user chose for its kind. */
export function tabCommand(platform: NodeJS.Platform, url: string): Command {
  if (platform === 'win32')
    return { program: 'rundll32.exe', args: ['url.dll,FileProtocolHandler', url] };
  return { program: platform === 'darwin' ? 'open' : 'xdg-open', args: [url] };
}

function start({ program, args }: Command): ChildProcess {
  return spawn(program, args, { stdio: 'ignore', shell: false });
}

function ended(child: ChildProcess): Promise<void> {
  return new Promise((done, failed) => child.once('error', failed).once('exit', () => done()));
}

function openTab(url: string, platform: NodeJS.Platform): OpenedPage {
  // Whatever becomes of it, the address was printed for the user to open by hand.
  ended(start(tabCommand(platform, url))).catch(() => undefined);
  return { how: 'tab', closed: new Promise(() => undefined), close: () => undefined };
}

/** Some openers end at once, others with the viewer: one that still runs by then shows the file. */
const openerMs = 3000;

/** Shows a file in the user's program for its kind; gives what went wrong, or nothing. */
export async function showFile(
  file: string,
  platform: NodeJS.Platform = process.platform,
): Promise<string> {
  const child = start(tabCommand(platform, file));
  return new Promise((done) => {
    setTimeout(() => done(''), openerMs).unref();
    child.once('error', ({ message }) => done(message));
    child.once('exit', (code) => done(code ? `it ended with ${code}` : ''));
  });
}

async function untilGone(window: ChildProcess, dataFolder: string): Promise<void> {
  try {
    await ended(window);
  } finally {
    await rm(dataFolder, { recursive: true, force: true, maxRetries: 5 });
  }
}

function openWindow(program: string, url: string, env: Machine['env']): OpenedPage {
  const dataFolder = mkdtempSync(path.join(tmpdir(), 'borefolio-window-'));
  const window = start(windowCommand(program, url, dataFolder, env));
  return {
    how: 'window',
    closed: untilGone(window, dataFolder),
    close: () => void window.kill(),
  };
}

/**
 * Opens the program's page: as an app window of a Chromium-type browser, else in the default
 * browser. The address may stand in the list of processes, so it must be good for one use only.
 */
export function openPage(
  url: string,
  machine: Machine = { platform: process.platform, env: process.env, exists: existsSync },
): OpenedPage {
  const program = findBrowser(machine);
  if (program === undefined) return openTab(url, machine.platform);
  const { closed, ...window } = openWindow(program, url, machine.env);
  // A browser that is there and cannot be started leaves the default one.
  return { ...window, closed: closed.catch(() => openTab(url, machine.platform).closed) };
}
