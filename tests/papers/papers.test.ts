import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { folder, shownPages } from './shownPages.ts';

const pages = shownPages();
/** Where changed pictures lie beside those that are kept. */
const changedTo = path.resolve(import.meta.dirname, '../../out/papers');

function kept(file: string): Buffer | undefined {
  try {
    return readFileSync(path.join(folder, file));
  } catch {
    return undefined;
  }
}

it('the pictures of all papers are those that the program makes', async () => {
  mkdirSync(changedTo, { recursive: true });
  const changed: string[] = [];
  for (const { file, png } of pages) {
    const made = await png();
    if (kept(file)?.equals(made)) continue;
    changed.push(file);
    writeFileSync(path.join(changedTo, file), made);
  }
  expect(changed, 'look at them in out/papers, then: npm run make:papers').toEqual([]);
}, 300_000);

it('no picture is kept of a page that is no more', () => {
  expect(readdirSync(folder).sort()).toEqual(pages.map(({ file }) => file).sort());
});
