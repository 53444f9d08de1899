import { electronProgram } from './electronRuntime.mjs';
import { say, top } from './project.mjs';
import { runBorefolio } from './runBorefolio.mjs';
import { runCommand } from './runCommand.mjs';

/** A desktop program that ends this soon with a fault has not opened its window. */
const startSeconds = 10;

/** Where the sheets go that no window can show. */
const sheets = 'out/sheets/';

/** @param {string} archive */
function openWindow(archive) {
  say('Opening the program in a browser’s window; Ctrl-C ends it.');
  return runBorefolio(['serve', archive, '--window']);
}

/** @param {string} archive */
async function openElectron(archive) {
  say('Opening the program; Ctrl-C ends it.');
  const started = Date.now();
  const outcome = await runCommand(electronProgram() ?? 'electron', [top, archive]);
  const failed = outcome.code !== 0 && Date.now() - started < startSeconds * 1000;
  if (!failed) return outcome;
  say('Electron’s window could not be opened on this machine.');
  return openWindow(archive);
}

/** @param {string} archive */
async function openPapers(archive) {
  say('No display is there: writing as-built and committee sheets, then serving the page.');
  for (const paper of ['as-built', 'committee']) {
    const written = await runBorefolio(['paper', paper, archive, '-o', sheets]);
    // 1: some record has errors; they are said, and the sheets are there all the same.
    if (written.code === 2) return written;
  }
  return runBorefolio(['serve', archive]);
}

const openers = { electron: openElectron, window: openWindow, papers: openPapers };

/**
 * Opens the program and stays until it is closed.
 * @param {import('./chooseHost.mjs').Host} host
 * @param {string} archive
 * @returns {Promise<number>} exit code
 */
export async function openHost(host, archive) {
  const opener = openers[host === 'fetchElectron' ? 'window' : host];
  const { code } = await opener(archive);
  // Ctrl-C is how the program is meant to be ended here, so it is no fault.
  return code === 130 ? 0 : code;
}
