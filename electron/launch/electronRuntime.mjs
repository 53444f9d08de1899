import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { currentNode, say, top } from './project.mjs';
import { runCommand } from './runCommand.mjs';

const folder = path.join(top, 'node_modules/electron');

/** Slow lines are common where wells are drilled: a download that moves may take this long. */
const longestSeconds = 900;

/** The program file of Electron's runtime; absent where it was never fetched. */
export function electronProgram() {
  try {
    const name = readFileSync(path.join(folder, 'path.txt'), 'utf8').trim();
    const program = path.join(folder, 'dist', name);
    return existsSync(program) ? program : undefined;
  } catch {
    return undefined;
  }
}

/** Tries to get the runtime; says how it went. A network that does not answer ends it soon. */
export async function fetchElectron() {
  say('Fetching Electron’s runtime, once (about 120 MB) …');
  const script = path.join(top, 'electron/launch/fetchElectron.mjs');
  const { code, timedOut } = await runCommand(currentNode() ?? process.execPath, [script], {
    seconds: longestSeconds,
  });
  if (code === 0 && electronProgram()) return;
  const why = timedOut ? 'took too long' : 'was not to be had';
  say(`Electron’s runtime ${why}; the program opens in a browser’s window instead.`);
}
