import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { sourceStamp } from '../../../electron/launch/sourceStamp.mjs';

let top = '';
const put = (file: string, text: string) => {
  mkdirSync(path.dirname(path.join(top, file)), { recursive: true });
  writeFileSync(path.join(top, file), text);
};

beforeEach(() => {
  top = mkdtempSync(path.join(tmpdir(), 'borefolio-stamp-'));
  put('core/base/one.ts', 'export const one = 1;');
});
afterEach(() => rmSync(top, { recursive: true }));

it('a build is due when a source changes, appears or moves, and not otherwise', () => {
  const before = sourceStamp(top);
  put('tests/one.test.ts', 'not built');
  expect(sourceStamp(top)).toBe(before);
  put('core/base/one.ts', 'export const one = 2;');
  const changed = sourceStamp(top);
  put('renderer/two.ts', '');
  const added = sourceStamp(top);
  rmSync(path.join(top, 'renderer/two.ts'));
  put('renderer/three.ts', '');
  const moved = sourceStamp(top);
  expect(new Set([before, changed, added, moved]).size).toBe(4);
});
