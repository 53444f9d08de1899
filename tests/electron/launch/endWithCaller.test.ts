import { spawn } from 'node:child_process';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { top } from '../../../electron/launch/project.mjs';

const module = pathToFileURL(path.join(top, 'electron/launch/endWithCaller.mjs')).href;
const program = `
  import { endWithCaller } from ${JSON.stringify(module)};
  endWithCaller();
  setInterval(() => {}, 1000);
  console.log('watching');`;
/** Starts the program, and goes away as soon as it watches. */
const caller = `
  const child = require('node:child_process').spawn(
    process.execPath,
    ['--input-type=module', '-e', ${JSON.stringify(program)}],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  child.stdout.once('data', () => process.exit());`;

it('a program that npm started ends when npm is gone', async () => {
  const child = spawn(process.execPath, ['-e', caller], {
    env: { ...process.env, npm_lifecycle_event: 'start' },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  // The program holds its caller's standard error, so that closes only when both have ended.
  child.stderr.resume();
  const ended = new Promise((resolve) => child.once('close', () => resolve('ended')));
  expect(await ended).toBe('ended');
}, 20_000);
