import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownFolder, type } from './typed.ts';

describe('borefolio paper check-page', () => {
  it('writes the page in the size and the language asked for', async () => {
    const folder = ownFolder();
    const args = ['paper', 'check-page', '--paper', 'a3', '--language', 'fr', '-o', 'check.svg'];
    const { code, out } = await type(folder, args);
    expect([code, out]).toEqual([0, ['Written: check.svg']]);
    const svg = readFileSync(path.join(folder, 'check.svg'), 'utf8');
    expect(svg).toContain('viewBox="0 0 420 297"');
    expect(svg).toContain('Page de contrôle');
  });

  it('names the file by itself in a folder', async () => {
    const { out } = await type(ownFolder(), ['paper', 'check-page', '-o', 'pages/']);
    expect(out).toEqual([`Written: ${path.join('pages', 'check page A4.pdf')}`]);
  });

  it.each([
    [['wells.borefolio', '-o', 'a.pdf'], 'paper check-page takes no file.'],
    [['--paper', 'A5', '-o', 'a.pdf'], 'There is no paper A5'],
    [['--language', 'de', '-o', 'a.pdf'], 'No sheet speaks de'],
    [[], 'Say where to write'],
  ])('refuses %j as not understood', async (more, sentence) => {
    const { code, err } = await type(ownFolder(), ['paper', 'check-page', ...more]);
    expect(code).toBe(2);
    expect(err[0]).toContain(sentence);
  });
});
