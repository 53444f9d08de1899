/**
 * `npm start [archive]`: installs, builds, makes the demo archive, and opens the program in what
 * this machine can show.
 */
import { existsSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { ensureBuilt } from './build.mjs';
import { chooseHost } from './chooseHost.mjs';
import { hasDisplay } from './display.mjs';
import { electronProgram, fetchElectron } from './electronRuntime.mjs';
import { endWithCaller } from './endWithCaller.mjs';
import { ensureInstalled } from './install.mjs';
import { openHost } from './openHost.mjs';
import { runMain, say, Stopped, top } from './project.mjs';
import { runBorefolio } from './runBorefolio.mjs';
import { underCurrentNode } from './underCurrentNode.mjs';

const demoFile = 'out/demo.borefolio';

/** The demo archive, made where it is not there yet. */
async function demoArchive() {
  if (existsSync(path.join(top, demoFile))) return demoFile;
  say('Making the demo archive …');
  mkdirSync(path.join(top, 'out'), { recursive: true });
  const { code } = await runBorefolio(['demo-archive', demoFile]);
  if (code !== 0) throw new Stopped('The demo archive could not be made.');
  return demoFile;
}

/** @param {string} asked as the caller wrote it */
function givenArchive(asked) {
  // npm starts scripts in the top folder and notes where the caller stood.
  const file = path.resolve(process.env['INIT_CWD'] ?? process.cwd(), asked);
  if (existsSync(file)) return file;
  throw new Stopped(
    `There is no archive at ${asked}: check the path, or leave it out for the demo.`,
  );
}

/** @param {boolean} fetched */
const choose = (fetched) =>
  chooseHost({
    display: hasDisplay(process.platform, process.env),
    electron: electronProgram() !== undefined,
    fetched,
  });

async function open() {
  const asked = process.argv[2];
  const archive = asked ? givenArchive(asked) : await demoArchive();
  await ensureBuilt();
  let host = choose(false);
  if (host === 'fetchElectron') {
    await fetchElectron();
    host = choose(true);
  }
  return openHost(host, archive);
}

endWithCaller();
await runMain(async () => {
  await ensureInstalled();
  return underCurrentNode(open);
});
