import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { ok, type Result } from '../../core/base/result.ts';
import { bindingDesk } from '../binder/bindingDesk.ts';
import { openPage, showFile } from '../loopback/browser.ts';
import { startLoopback } from '../loopback/server.ts';
import { openService } from '../service/openService.ts';
import type { Service } from '../service/service.ts';
import { identitiesBeside, identitiesIn } from '../service/identityStore.ts';
import { forgetPrints, systemPrinting } from '../service/systemPrinting.ts';
import { settingsIn } from '../service/settingsFile.ts';
import { misused, type Command, type World } from './command.ts';
import { makeDemoArchive } from './demoArchive.ts';
import { tellBringing } from './openGiven.ts';
import { builtPage } from './places.ts';

/** A window that is gone this soon was not closed by a person: its browser could not show it. */
const soonMs = 3000;

/** How long a window may take to close when the program is to stop. */
const farewellMs = 2000;

/** Shows the page's window until it is closed, and closes it when the program is to stop. */
async function showWindow(url: string, stopped: Promise<void>, world: World): Promise<void> {
  const opened = performance.now();
  const { closed, close } = openPage(url);
  const end = await Promise.race([closed.then(() => 'closed'), stopped.then(() => 'stopped')]);
  if (end === 'stopped') {
    close();
    // A window clears its folder; a tab of the default browser is never seen to go.
    await Promise.race([closed, setTimeout(farewellMs, undefined, { ref: false })]);
  } else if (performance.now() - opened < soonMs) {
    world.complain('The browser’s window did not stay open: open the address above by hand.');
    await stopped;
  }
}

/** Where there are windows there is a viewer for PDFs; a server alone leaves them to the browser. */
const printing = systemPrinting({ temporary: tmpdir, openFile: (file) => showFile(file) });

/** Serves the page until it is to stop, or until its own window is closed. */
async function servePage(service: Service, inWindow: boolean, world: World): Promise<void> {
  const stopped = world.asksToStop();
  const loopback = await startLoopback({ service, pageFolder: builtPage });
  world.report(
    { url: loopback.url },
    `The page is at ${loopback.url} (for this machine only; Ctrl-C ends it)`,
  );
  try {
    if (inWindow) await showWindow(loopback.newUrl(), stopped, world);
    else await stopped;
  } finally {
    await loopback.close();
  }
}

async function serveArchive(file: string, inWindow: boolean, world: World): Promise<Result<0>> {
  const { now: clock, newId, settingsFile, complain } = world;
  const opened = openService(file, {
    clock,
    newId,
    settings: settingsIn(settingsFile),
    identities: identitiesIn(identitiesBeside(settingsFile)),
    ...(inWindow && { printing }),
    binding: bindingDesk(),
    mustExist: true,
    onBackupTrouble: complain,
    onBringing: tellBringing(world),
  });
  if (!opened.ok) return opened;
  try {
    await servePage(opened.value.service, inWindow, world);
  } finally {
    await opened.value.close();
    forgetPrints();
  }
  return ok(0);
}

/** Without an archive: invented wells, in a folder that goes away at the end. */
async function serveDemo(inWindow: boolean, world: World): Promise<Result<0>> {
  const folder = mkdtempSync(path.join(tmpdir(), 'borefolio-demo-'));
  try {
    const file = path.join(folder, 'demo.borefolio');
    const made = makeDemoArchive(file, world);
    if (!made.ok) return made;
    world.print('Serving invented wells; changes to them are not kept.');
    return await serveArchive(file, inWindow, world);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** `serve`: the page behind a server that only this machine reaches. */
export const serve: Command = {
  name: 'serve',
  takes: '[ARCHIVE] [--window]',
  says: 'Serves the page to this machine and prints its address; --window opens it in a browser',
  options: { window: { type: 'boolean' } },
  run({ words, options }, world) {
    const [file, ...more] = words;
    if (more.length > 0) return misused(`Name one archive only; ${more.join(' ')} is too much.`);
    if (!existsSync(path.join(builtPage, 'index.html')))
      return misused('The page is not built: run `npm run build` first.');
    const inWindow = options['window'] === true;
    if (file === undefined) return serveDemo(inWindow, world);
    const target = path.resolve(world.folder, file);
    if (!existsSync(target)) return misused(`There is no archive ${file}: check its path.`);
    return serveArchive(target, inWindow, world);
  },
};
