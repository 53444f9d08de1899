import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { showFile } from '../../../electron/loopback/browser.ts';
import { freshFolder } from '../archive/sample.ts';

let programs: string;

/** Stands in for the system's opener. */
function putOpener(script: string): void {
  const file = path.join(programs, 'xdg-open');
  writeFileSync(file, `#!/bin/sh\n${script}\n`);
  chmodSync(file, 0o755);
}

beforeEach(() => {
  programs = freshFolder();
  vi.stubEnv('PATH', `${programs}${path.delimiter}/usr/bin${path.delimiter}/bin`);
});
afterEach(() => vi.unstubAllEnvs());

describe('a file that is shown, with a stand-in for the system’s opener', () => {
  it('is handed over as it is named', async () => {
    const seen = path.join(programs, 'seen');
    putOpener(`echo "$1" > '${seen}'`);
    expect(await showFile('/tmp/a sheet.pdf', 'linux')).toBe('');
    expect(readFileSync(seen, 'utf8')).toBe('/tmp/a sheet.pdf\n');
  });

  it('says when nothing shows it', async () => {
    putOpener('exit 3');
    expect(await showFile('/tmp/a.pdf', 'linux')).toBe('it ended with 3');
    vi.stubEnv('PATH', freshFolder());
    expect(await showFile('/tmp/a.pdf', 'linux')).toContain('ENOENT');
  });

  it('is shown by a viewer that stays open', async () => {
    const done = path.join(programs, 'done');
    putOpener(`sleep 8; touch '${done}'`);
    expect(await showFile('/tmp/a.pdf', 'linux')).toBe('');
    expect(existsSync(done)).toBe(false);
  });
});
