import { spawn } from 'node:child_process';
import { readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { top } from '../../../electron/launch/project.mjs';

const sheets = path.join(top, 'out/sheets');
const demo = path.join(top, 'demo-data');
const noDisplay = { ...process.env, DISPLAY: '', WAYLAND_DISPLAY: '' };

/** Starts the program as `npm start` does; the installation of the tests serves it too. */
function start() {
  const child = spawn(process.execPath, [path.join(top, 'electron/launch/start.mjs')], {
    env: noDisplay,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  let said = '';
  child.stdout.on('data', (part) => (said += part));
  child.stderr.on('data', (part) => (said += part));
  const ended = new Promise<number | null>((resolve) => child.once('close', resolve));
  const saysAddress = async () => {
    for (;;) {
      const address = /http:\/\/127\.0\.0\.1:\d+\/\?k=\S+/.exec(said)?.[0];
      if (address) return address;
      if (child.exitCode !== null) throw new Error(said);
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  };
  return { child, ended, saysAddress, said: () => said };
}

it('npm start without a display writes the sheets, serves the page, and ends on Ctrl-C', async () => {
  rmSync(sheets, { recursive: true, force: true });
  const { child, ended, saysAddress, said } = start();
  const entered = await fetch(await saysAddress(), { redirect: 'manual' });
  expect(entered.status).toBe(303);
  const written = readdirSync(sheets);
  const wells = readdirSync(demo).filter((name) => name.endsWith('.json')).length;
  // An as-built sheet and one for the committee of each.
  expect(written).toHaveLength(2 * wells);
  for (const name of written) expect(said()).toContain(`Written: out/sheets/${name}`);
  child.kill('SIGINT');
  expect(await ended).toBe(0);
  // Without a display nothing is fetched that only a window needs.
  expect(said()).not.toContain('Fetching');
}, 240_000);
