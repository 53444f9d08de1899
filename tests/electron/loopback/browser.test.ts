import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { openPage, tabCommand, windowCommand } from '../../../electron/loopback/browser.ts';
import { freshFolder } from '../archive/sample.ts';
import { findBrowser, type Machine } from '../../../electron/loopback/findBrowser.ts';

const url = 'http://127.0.0.1:5000/?k=a&b$(c)"d';

function machine(
  platform: NodeJS.Platform,
  env: Record<string, string>,
  ...files: string[]
): Machine {
  return { platform, env, exists: (file) => files.includes(file) };
}

describe('finding a browser', () => {
  it('goes along the path on Linux, and never looks in a relative folder', () => {
    const env = { PATH: 'bin:/usr/local/bin:/usr/bin' };
    expect(findBrowser(machine('linux', env, '/usr/bin/chromium'))).toBe('/usr/bin/chromium');
    expect(findBrowser(machine('linux', env, 'bin/chromium'))).toBeUndefined();
    expect(findBrowser(machine('linux', {}))).toBeUndefined();
  });

  it('looks among the applications on macOS, the user’s own too', () => {
    const program = 'Applications/Chromium.app/Contents/MacOS/Chromium';
    const env = { HOME: '/Users/a' };
    expect(findBrowser(machine('darwin', env, `/${program}`))).toBe(`/${program}`);
    expect(findBrowser(machine('darwin', env, `/Users/a/${program}`))).toBe(`/Users/a/${program}`);
  });

  it('looks among the programs on Windows', () => {
    const file = 'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe';
    const env = { 'ProgramFiles(x86)': 'C:\\Program Files (x86)' };
    expect(findBrowser(machine('win32', env, file))).toBe(file);
  });
});

describe('opening the page', () => {
  it('hands the address on as one argument', () => {
    expect(windowCommand('chromium', url, '/data', {}).args).toContain(`--app=${url}`);
    for (const platform of ['linux', 'darwin', 'win32'] as const)
      expect(tabCommand(platform, url).args.at(-1)).toBe(url);
  });

  it('keeps the window apart from the user’s own browsing', () => {
    expect(windowCommand('chromium', url, '/data', {}).args).toContain('--user-data-dir=/data');
  });

  it('goes without the sandbox in tests only', () => {
    expect(windowCommand('chromium', url, '/data', {}).args).not.toContain('--no-sandbox');
    const env = { BOREFOLIO_TEST_NO_SANDBOX: '1' };
    expect(windowCommand('chromium', url, '/data', env).args).toContain('--no-sandbox');
  });

  it('waits for the window and leaves no folder behind', async () => {
    const folder = freshFolder();
    const program = path.join(folder, 'chromium');
    writeFileSync(program, `#!/bin/sh\nprintf '%s\\n' "$@" > "${folder}/said"\n`);
    chmodSync(program, 0o755);
    const opened = openPage(url, { platform: 'linux', env: { PATH: folder }, exists: existsSync });
    expect(opened.how).toBe('window');
    await opened.closed;
    const said = readFileSync(path.join(folder, 'said'), 'utf8').split('\n');
    expect(said[0]).toBe(`--app=${url}`);
    expect(existsSync(said[1]!.slice('--user-data-dir='.length))).toBe(false);
  });

  it('closes the window when asked to', async () => {
    const folder = freshFolder();
    const program = path.join(folder, 'chromium');
    writeFileSync(program, '#!/bin/sh\nexec sleep 600\n');
    chmodSync(program, 0o755);
    const opened = openPage(url, {
      platform: 'linux',
      env: { PATH: folder },
      exists: existsSync,
    });
    opened.close();
    await expect(opened.closed).resolves.toBeUndefined();
  });
});
