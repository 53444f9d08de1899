import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readFonts } from '../../../electron/files/fonts.ts';
import { loadTemplate } from '../../../electron/service/loadTemplate.ts';
import { makeAsBuilt } from '../../../electron/service/sheet.ts';
import { well } from '../../demo-data/wells.ts';
import { textsOn } from '../../sheets/placed.ts';

const example = fileURLToPath(new URL('../../../docs/template.example.json', import.meta.url));

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'borefolio-template-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function written(name: string, content: string): string {
  const file = path.join(folder, name);
  writeFileSync(file, content);
  return file;
}

describe('the template in a file', () => {
  it('comes with its logos and their sizes', () => {
    const loaded = loadTemplate(example);
    expect(loaded.ok && loaded.value.logos).toMatchObject([{ width: 96, height: 96 }]);
  });

  it('is refused where it is no JSON, or a logo is absent or no picture', () => {
    const sentenceOf = (content: string) => {
      const loaded = loadTemplate(written('template.json', content));
      return loaded.ok ? '' : loaded.error.sentence;
    };
    expect(sentenceOf('{')).toContain('is not written as JSON');
    const logo = (more: object) => JSON.stringify({ name: ['a'], logos: [{ says: 'x', ...more }] });
    expect(sentenceOf(logo({ file: 'none.png' }))).toContain('does not lie beside the template');
    expect(sentenceOf(logo({ data: 'AAAA' }))).toContain('neither a PNG nor a JPEG');
  });

  it('stands over the frame of every page, with its labels and disclaimer', () => {
    const loaded = loadTemplate(example);
    if (!loaded.ok) throw new Error(loaded.error.sentence);
    const made = { paper: 'A4', fonts: readFonts(), madeAt: '2026-01-31T12:00:00Z' } as const;
    const record = well('hand-drilled-32m.json');
    const { pages } = makeAsBuilt(record, { ...made, template: loaded.value }).drawing;
    for (const page of pages) {
      const strip = textsOn(page).filter(({ groups }) => groups.includes('headStrip'));
      expect(strip.map(({ item }) => item.text)).toContain('Eau rurale de Kelumvara');
      for (const { item, groups } of textsOn(page))
        if (!groups.includes('headStrip')) expect(item.y).toBeGreaterThan(24);
    }
    const words = pages.flatMap(textsOn).map(({ item }) => item.text);
    expect(words).toContain('Levé par');
    expect(words.some((one) => one.startsWith('Invented example of a template'))).toBe(true);
  });
});
