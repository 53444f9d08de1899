import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isOnPath, missingTools, sayMissing, tools } from './systemTools.mjs';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'borefolio-tools-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const put = (name: string, mode: number) => {
  writeFileSync(path.join(folder, name), '');
  chmodSync(path.join(folder, name), mode);
};

describe('programs of the system', () => {
  it('are found on the path when they can be run', () => {
    put('qpdf', 0o755);
    put('notes', 0o644);
    expect(isOnPath('qpdf', `/nowhere${path.delimiter}${folder}`)).toBe(true);
    expect(isOnPath('pdftoppm', folder)).toBe(false);
  });

  it('are missed only when no program that would do is there', () => {
    put('google-chrome', 0o755);
    const missed = missingTools(folder).map(({ debian }) => debian);
    expect(missed).not.toContain('chromium');
    expect(missed).toContain('qpdf');
  });

  it('are asked for in one sentence with the command', () => {
    const missing = tools.filter(({ debian }) => ['poppler-utils', 'qpdf'].includes(debian));
    expect(sayMissing(missing)).toBe(
      'The tests need pdftoppm, to look at printed sheets; pdfsig, to check seals; qpdf, to check that PDF files are sound. Install it and run the tests again (on Debian: sudo apt-get install poppler-utils qpdf).',
    );
  });
});
