import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ownFolder } from './typed.ts';

const bin = path.resolve(import.meta.dirname, '../../../electron/cli/borefolio.mjs');

function runNode(...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  return { status, stdout, stderr };
}

/** A copy of the bin where npm puts an installed package. */
function installedBin(folder: string, bundle?: string) {
  const top = path.join(folder, 'node_modules/borefolio');
  mkdirSync(path.join(top, 'electron/cli'), { recursive: true });
  mkdirSync(path.join(top, 'dist/cli'), { recursive: true });
  writeFileSync(path.join(top, 'package.json'), '{"type":"module"}');
  // Sources that came along must not be run: Node takes no types off below node_modules.
  writeFileSync(path.join(top, 'electron/cli/main.ts'), 'export const main = (): never => {};');
  const copy = path.join(top, 'electron/cli/borefolio.mjs');
  copyFileSync(bin, copy);
  if (bundle !== undefined) writeFileSync(path.join(top, 'dist/cli/borefolio.js'), bundle);
  return copy;
}

/** Makes this Node say that it is an old one. */
function pretendOld(folder: string): string {
  const file = path.join(folder, 'old.mjs');
  const versions = '{ ...process.versions, node: "20.2.0" }';
  writeFileSync(file, `Object.defineProperty(process, 'versions', { value: ${versions} });`);
  return pathToFileURL(file).href;
}

const echo = 'export const main = (args) => console.log("bundle", ...args);';

describe('the program borefolio', () => {
  it('runs the sources in a clone and passes the exit code on', () => {
    expect(runNode(bin, '--help')).toMatchObject({ status: 0, stderr: '' });
    expect(runNode(bin, 'check')).toMatchObject({ status: 2, stdout: '' });
  });

  it('runs the bundle where it is installed as a package', () => {
    const copy = installedBin(ownFolder(), echo);
    expect(runNode(copy, 'check', 'a.json').stdout).toBe('bundle check a.json\n');
  });

  it('says what is missing where it was not built', () => {
    const { status, stderr } = runNode(installedBin(ownFolder()));
    expect(status).toBe(2);
    expect(stderr).toBe('Borefolio is not built: run `npm run build` in its folder first.\n');
  });

  it('runs under the project’s own Node where the caller’s is too old', () => {
    const outcome = runNode('--import', pretendOld(ownFolder()), bin, '--help');
    expect(outcome.status).toBe(0);
    expect(outcome.stdout).toContain('borefolio check');
  });

  it('says that a newer Node is needed where there is none', () => {
    const folder = ownFolder();
    const { status, stderr } = runNode('--import', pretendOld(folder), installedBin(folder, echo));
    expect(status).toBe(2);
    expect(stderr).toMatch(/^Borefolio needs Node 24 or newer; this is 20\.2\.0\. .*\.\n$/);
  });
});
