import path from 'node:path';
import { top } from './project.mjs';
import { runCommand } from './runCommand.mjs';

/**
 * Runs the command line; this Node must be a current one.
 * @param {readonly string[]} args
 */
export function runBorefolio(args) {
  return runCommand(process.execPath, [path.join(top, 'electron/cli/main.ts'), ...args]);
}
