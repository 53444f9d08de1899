import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { replaceFile } from '../../../electron/files/replaceFile.ts';
import { freshFolder } from '../archive/sample.ts';

it('puts the new file in the place of the old and leaves nothing beside it', async () => {
  const file = path.join(freshFolder(), 'sheet.pdf');
  writeFileSync(file, 'old');
  await replaceFile(file, new Uint8Array([110, 101, 119]));
  expect(readFileSync(file, 'utf8')).toBe('new');
  expect(readdirSync(path.dirname(file))).toEqual(['sheet.pdf']);
});

it('throws and cleans up when the place cannot be taken', async () => {
  const folder = freshFolder();
  mkdirSync(path.join(folder, 'sheet.pdf/full'), { recursive: true });
  await expect(replaceFile(path.join(folder, 'sheet.pdf'), 'new')).rejects.toThrow();
  expect(readdirSync(folder)).toEqual(['sheet.pdf']);
});
