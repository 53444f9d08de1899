import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { readFonts } from '../../electron/files/fonts.ts';
import { loadTemplate } from '../../electron/service/loadTemplate.ts';
import { makeCommittee, makeLayingOut, type Sheet } from '../../electron/service/sheet.ts';
import { well, fileNames } from '../demo-data/wells.ts';
import { edgesOf, placedOn, textsOn } from './placed.ts';

const example = fileURLToPath(new URL('../../docs/template.example.json', import.meta.url));
const loaded = loadTemplate(example);
if (!loaded.ok) throw new Error(loaded.error.sentence);
const template = { ...loaded.value, disclaimer: 'Kept for ever and a day. '.repeat(15).trim() };
const made = { fonts: readFonts(), madeAt: '2026-01-31T12:00:00Z', template };

const wordsOf = ({ drawing }: Sheet) =>
  drawing.pages.map((page) => textsOn(page).map(({ item }) => item.text));

/** Texts of a page that reach over its edges, or down from the strip into what stands under it. */
function misplaced({ drawing }: Sheet): string[] {
  return drawing.pages.flatMap((page) => {
    const strip = placedOn(page).filter(({ groups }) => groups.includes('headStrip'));
    const foot = Math.max(
      ...strip.flatMap(({ item }) => (item.kind === 'image' ? [edgesOf(item)[3]] : [])),
    );
    return textsOn(page)
      .filter(({ item: { x, y, width }, groups }) =>
        groups.includes('headStrip') ? y > foot + 1.5 : y < foot || y > 287 || x + width > 200,
      )
      .map(({ item }) => item.text);
  });
}

describe.each(fileNames)('the sheets of %s with a template', (name) => {
  const record = well(name);
  const sheets = [
    makeLayingOut(record, made),
    makeCommittee(record, { ...made, languages: ['fr'] }),
  ];

  it('have the strip on every page, clear of what stands under it', () => {
    for (const sheet of sheets) {
      for (const words of wordsOf(sheet)) expect(words).toContain('Eau rurale de Kelumvara');
      expect(misplaced(sheet)).toEqual([]);
    }
  });

  it('say the disclaimer once, whole', () => {
    for (const sheet of sheets) {
      const said = sheet.drawing.pages.flatMap((page) =>
        textsOn(page).filter(({ groups }) => groups.includes('disclaimer')),
      );
      expect(said.map(({ item }) => item.text.trim()).join(' ')).toBe(template.disclaimer);
    }
  });

  it('have no letter under 11 pt on the sheet for the committee', () => {
    for (const page of sheets[1]!.drawing.pages)
      for (const { item } of textsOn(page))
        expect((item.em * 72) / 25.4).toBeGreaterThanOrEqual(11);
  });
});

/** One logo, two names, three lines of address, and a disclaimer of two lines. */
const shipped = loaded.value;

describe.each(languages)('with the example, the sheets for the committee in %s', (language) => {
  it.each(fileNames)('of %s stand on one A4 page, no letter under 11 pt', (name) => {
    const sheet = makeCommittee(well(name), { ...made, template: shipped, languages: [language] });
    expect(sheet.drawing.pages).toHaveLength(1);
    expect(misplaced(sheet)).toEqual([]);
    const texts = sheet.drawing.pages.flatMap(textsOn);
    expect(texts.filter(({ groups }) => groups.includes('disclaimer'))).toHaveLength(2);
    for (const { item } of texts) expect((item.em * 72) / 25.4).toBeGreaterThanOrEqual(11);
    const strip = texts.filter(({ groups }) => groups.includes('headStrip'));
    expect(strip.map(({ item }) => item.text)).toEqual([...shipped.name, ...shipped.address]);
  });
});

it('two languages side by side have the strip on either half', () => {
  const both = { ...made, languages: ['fr', 'en'], paper: 'A3' } as const;
  const [front] = wordsOf(makeCommittee(well('laid-out-45m.json'), both));
  expect(front!.filter((one) => one === 'Eau rurale de Kelumvara')).toHaveLength(2);
});

it('labels of the organisation stand on the laying-out sheet too', () => {
  const labels = { number: 'Ouvrage', contractor: 'Foré par' };
  const sheet = makeLayingOut(well('laid-out-45m.json'), {
    ...made,
    template: { ...template, labels },
  });
  for (const words of wordsOf(sheet))
    expect(words).toEqual(expect.arrayContaining(['Ouvrage', 'Foré par']));
});
