import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { top } from './project.mjs';

/**
 * @typedef {object} RunOptions
 * @property {Record<string, string | undefined>} [env] replaces the environment
 * @property {number} [seconds] ends the program, with all that it started, after this time
 * @property {boolean} [quiet] keeps what it prints instead of showing it
 *
 * @typedef {object} RunOutcome
 * @property {number} code exit code; 127 when the program could not be started
 * @property {string} output what a quiet program printed
 * @property {boolean} timedOut
 */

/** @param {import('node:child_process').ChildProcess} child @param {boolean} group */
function end(child, group) {
  if (child.pid === undefined) return;
  try {
    if (group) process.kill(-child.pid, 'SIGKILL');
    else child.kill('SIGKILL');
  } catch {
    // It ended by itself in the meantime.
  }
}

/**
 * Hands the signals that ask this program to stop on to a child, which then decides how to end.
 * @param {import('node:child_process').ChildProcess} child
 */
function passSignals(child) {
  const signals = /** @type {const} */ (['SIGINT', 'SIGTERM']);
  const pass = signals.map((signal) => {
    const listener = () => void child.kill(signal);
    process.on(signal, listener);
    return () => process.off(signal, listener);
  });
  return () => pass.forEach((stop) => stop());
}

/**
 * Runs a program in the project's top folder to its end.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<RunOutcome>}
 */
export function runCommand(command, args, { env = process.env, seconds, quiet = false } = {}) {
  // A group of its own lets a time limit end grandchildren too; Windows has no groups.
  const group = seconds !== undefined && process.platform !== 'win32';
  return new Promise((resolve) => {
    let output = '';
    let timedOut = false;
    const child = spawn(command, args, {
      cwd: top,
      env,
      detached: group,
      stdio: quiet ? ['ignore', 'pipe', 'pipe'] : 'inherit',
    });
    const stopPassing = passSignals(child);
    const limit =
      seconds === undefined
        ? undefined
        : setTimeout(() => {
            timedOut = true;
            end(child, group);
          }, seconds * 1000);
    const finish = (/** @type {number} */ code) => {
      clearTimeout(limit);
      stopPassing();
      resolve({ code, output, timedOut });
    };
    child.stdout?.on('data', (part) => (output += part));
    child.stderr?.on('data', (part) => (output += part));
    child.on('error', () => finish(127));
    child.on('close', (code, signal) => finish(code ?? (signal === 'SIGINT' ? 130 : 1)));
  });
}

/**
 * Runs npm: the client that started this program, else the one on the path.
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 */
export function runNpm(args, options) {
  const client = process.env['npm_execpath'];
  if (client && /npm-cli\.c?js$/.test(client) && existsSync(client))
    return runCommand(process.execPath, [client, ...args], options);
  // Windows starts npm.cmd only through its command interpreter.
  return process.platform === 'win32'
    ? runCommand('cmd.exe', ['/d', '/s', '/c', 'npm', ...args], options)
    : runCommand('npm', args, options);
}
