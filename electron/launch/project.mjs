/**
 * Where things of the project lie. The files of this folder are plain JavaScript for Node 18 and
 * newer: they run before anything is installed.
 */
import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's top folder. */
export const top = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

/** The first Node that runs TypeScript as it stands and carries what the archive needs. */
export const nodeMajor = 24;

/** The Node that the project carries, whether it is installed yet or not. */
export function ownNode(platform = process.platform) {
  const name = platform === 'win32' ? 'node.exe' : 'node';
  return path.join(top, 'node_modules/node/bin', name);
}

/** @param {string} version such as `24.21.0` */
export function isCurrentNode(version) {
  return Number.parseInt(version, 10) >= nodeMajor;
}

/** A Node that the project's programs run on; absent before the first install. */
export function currentNode() {
  if (isCurrentNode(process.versions.node)) return process.execPath;
  return existsSync(ownNode()) ? ownNode() : undefined;
}

/** @param {string} sentence what is being done, for the person at the terminal */
export function say(sentence) {
  console.log(sentence);
}

/** The user can act on this: its message is the whole of what is said. */
export class Stopped extends Error {}

/**
 * Runs a program's body; what stops it becomes one sentence and exit code 1.
 * @param {() => Promise<number>} body gives the exit code
 */
export async function runMain(body) {
  try {
    process.exitCode = await body();
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    console.error(error.message);
    process.exitCode = 1;
  }
}
