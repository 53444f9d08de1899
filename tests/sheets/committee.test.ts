import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages, type Language } from '../../core/base/language.ts';
import { committeeWordsIn } from '../../core/drawing/papers/committee/words/languages.ts';
import { paintPdf } from '../../core/paint/pdf/paintPdf.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { randomWell } from '../laws/randomWell.ts';
import { readPdf } from '../reading/pdf.ts';
import { brokenByCommittee, drawCommitteeSheet } from './committee.ts';
import { fonts, type DrawnSheet } from './drawn.ts';
import { textsOn } from './placed.ts';
import { demoWells, exampleWells, publishedWells } from './wells.ts';
import { wordyWell } from './wordyWell.ts';

const pairs: readonly (readonly [Language, Language])[] = [
  ['en', 'fr'],
  ['fr', 'en'],
  ['fr', 'pt'],
  ['pt', 'en'],
];

/** 11 pt in millimetres: a point is 1/72 inch. */
const elevenPoints = (11 * 25.4) / 72;

function textOf({ drawing }: DrawnSheet): string {
  return drawing.pages
    .flatMap(textsOn)
    .map(({ item }) => item.text)
    .join(' ');
}

function smallTexts({ drawing }: DrawnSheet): string[] {
  const texts = drawing.pages.flatMap(textsOn).map(({ item }) => item);
  return texts.filter(({ em }) => em < elevenPoints).map(({ text }) => text);
}

describe.each(languages)('the committee sheets in %s', (language) => {
  it.each([...demoWells, ...exampleWells])('of %s keep the laws', (_, record) => {
    const sheet = drawCommitteeSheet(record, [language]);
    expect(brokenByCommittee(sheet)).toEqual({});
    expect(smallTexts(sheet)).toEqual([]);
  });

  it.each(demoWells)('of %s stand on one upright A4 page', (_, record) => {
    const { pages } = drawCommitteeSheet(record, [language]).drawing;
    expect(pages.map(({ width, height }) => [width, height])).toEqual([[210, 297]]);
  });

  it.each(demoWells)('of %s cut no word of their own', (_, record) => {
    const written = /^(site|identity|pump|marks)\b/;
    const texts = drawCommitteeSheet(record, [language]).drawing.pages.flatMap(textsOn);
    const cut = texts.filter(
      ({ item, source }) => item.text.endsWith('…') && !written.test(source ?? ''),
    );
    expect(cut.map(({ item }) => item.text)).toEqual([]);
  });
});

describe.each(pairs)('two languages, %s and %s,', (...pair) => {
  it.each(demoWells)('of %s have a page each on A4', (_, record) => {
    const sheet = drawCommitteeSheet(record, pair);
    expect(sheet.drawing.pages).toHaveLength(2);
    expect(brokenByCommittee(sheet)).toEqual({});
    expect(smallTexts(sheet)).toEqual([]);
  });

  it.each(demoWells)('of %s stand side by side on A3', (_, record) => {
    const sheet = drawCommitteeSheet(record, pair, 'A3');
    expect(sheet.drawing.pages).toHaveLength(1);
    expect(brokenByCommittee(sheet)).toEqual({});
    const texts = sheet.drawing.pages.flatMap(textsOn).map(({ item }) => item);
    const halves = pair.map((language) => {
      const { title } = committeeWordsIn(language);
      return texts.filter(({ text }) => text.startsWith(title)).map(({ x }) => x > 210);
    });
    expect(halves).toEqual([[false], [true]]);
  });
});

it.each(publishedWells)('the committee sheet of %s keeps the laws', (_, record) => {
  const sheet = drawCommitteeSheet(record);
  expect(brokenByCommittee(sheet)).toEqual({});
  expect(smallTexts(sheet)).toEqual([]);
});

it.each([
  ['random wells', randomWell, 20260301],
  ['wells with all that people write', wordyWell, 20260302],
] as const)('sheets of %s keep the laws, on a second page where they must', (_, wells, seed) => {
  fc.assert(
    fc.property(
      wells as fc.Arbitrary<WellRecord>,
      fc.constantFrom(...languages),
      (record, language) => {
        const sheet = drawCommitteeSheet(record, [language]);
        expect(brokenByCommittee(sheet)).toEqual({});
        expect(smallTexts(sheet)).toEqual([]);
        expect(sheet.drawing.pages.length).toBeLessThanOrEqual(2);
      },
    ),
    { numRuns: 150, seed },
  );
});

describe('what no sheet says', () => {
  // The project's own rule: only a health authority says whether water may be drunk.
  const forbidden: Readonly<Record<Language, RegExp>> = {
    en: /\b(safe|safely|unsafe|potable|drinkable|pure|clean|harmless|fit to drink)\b/i,
    fr: /(potable|\bsaine?s?\b|sans danger|sans risque|\bpure?\b|\bpropre\b|consommable)/i,
    pt: /(potáve|\bsegur[ao]s?\b|\bpur[ao]\b|\blimpa\b|sem perigo|sem risco|própria para)/i,
  };

  function stringsIn(value: unknown): string[] {
    if (typeof value === 'string') return [value];
    return typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(stringsIn)
      : [];
  }

  it.each(languages)('is that the water is safe, in no word of the %s catalogue', (language) => {
    const found = stringsIn(committeeWordsIn(language)).filter((one) =>
      forbidden[language].test(one),
    );
    const allowed = ['Corde de sécurité', 'Corda de segurança', 'Safety rope'];
    expect(found.filter((one) => !allowed.includes(one))).toEqual([]);
  });

  it.each(languages)('is that of any demo well in %s either', (language) => {
    for (const [, record] of demoWells) {
      const { identity, site, pump, ...rest } = record;
      const bare = { ...rest, identity: { state: identity?.state }, pump: { kind: pump?.kind } };
      const own = { ...bare, site: { surroundings: site?.surroundings } } as WellRecord;
      expect(textOf(drawCommitteeSheet(own, [language]))).not.toMatch(forbidden[language]);
    }
  });
});

describe('a sheet painted as PDF and read by pdfjs', () => {
  it.each(languages)('has no letter under 11 pt in %s', async (language) => {
    for (const [, record] of demoWells) {
      const { drawing } = drawCommitteeSheet(record, [language]);
      const pages = await readPdf(paintPdf(drawing, fonts.files));
      const texts = pages.flatMap(({ texts: all }) => all);
      expect(texts.length).toBeGreaterThan(20);
      expect(Math.min(...texts.map(({ em }) => em))).toBeGreaterThanOrEqual(elevenPoints);
    }
  });
});
