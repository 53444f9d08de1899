import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import type { Page } from '../../core/drawing/items.ts';
import { qualityWordsIn } from '../../core/drawing/papers/asBuilt/words/qualityLanguages.ts';
import { testWordsIn } from '../../core/drawing/papers/asBuilt/words/testLanguages.ts';
import { well } from '../demo-data/wells.ts';
import { drawSheet, paperNames, type DrawnSheet } from './drawn.ts';
import { brokenBy } from './laws/index.ts';
import { groupsNamed, placedOn, textsOn } from './placed.ts';
import { demoWells } from './wells.ts';
import { wateryWell } from './wateryWell.ts';

function pagesWith({ drawing }: DrawnSheet, name: string): Page[] {
  return drawing.pages.filter(({ items }) => groupsNamed(items, name).length > 0);
}

const wordsOf = (pages: readonly Page[]) =>
  pages
    .flatMap(textsOn)
    .map(({ item }) => item.text)
    .join(' ');

const hand = well('hand-drilled-32m.json');

describe('the pages of tests and samples', () => {
  it.each(demoWells)('of %s stand only where the record has any', (_, record) => {
    const sheet = drawSheet(record, 'A4');
    expect(pagesWith(sheet, 'tests').length > 0).toBe((record.tests ?? []).length > 0);
    expect(pagesWith(sheet, 'quality').length > 0).toBe((record.quality ?? []).length > 0);
  });

  it.each(paperNames)('keep every law over random tests and samples on %s', (paper) => {
    fc.assert(
      fc.property(wateryWell, fc.constantFrom(...languages), (record, language) => {
        expect(brokenBy(drawSheet(record, paper, language))).toEqual({});
      }),
      { numRuns: 60, seed: 20260203 },
    );
  });

  it('are counted with all others in the title block', () => {
    const { drawing } = drawSheet(hand, 'A4');
    const total = drawing.pages.length;
    drawing.pages.forEach((page, at) => {
      expect(wordsOf([page])).toContain(`${at + 1} of ${total}`);
    });
  });

  it('name the practice and the document', () => {
    const sheet = drawSheet(hand, 'A4');
    const pages = [...pagesWith(sheet, 'tests'), ...pagesWith(sheet, 'quality')];
    for (const page of pages) expect(wordsOf([page])).toContain('Judged by');
    expect(wordsOf(pagesWith(sheet, 'tests'))).toContain('Pumping tests');
    expect(wordsOf(pagesWith(sheet, 'quality'))).toContain('Water quality');
  });
});

describe('the page of samples', () => {
  it.each(languages)('says in %s that no sheet declares water safe', (language) => {
    const pages = pagesWith(drawSheet(hand, 'A4', language), 'quality');
    expect(wordsOf(pages)).toContain(qualityWordsIn(language).noVerdict.slice(0, 40));
  });

  it('calls no water safe, potable or fit', () => {
    const pages = pagesWith(drawSheet(hand, 'A4'), 'quality');
    const own = pages.map((page) => ({ ...page, items: groupsNamed(page.items, 'quality') }));
    const said = wordsOf(own);
    const verdicts = said.match(/\b(safe|potable|fit|drinkable|harmless)\b/gi) ?? [];
    expect(verdicts).toEqual(['safe']);
    expect(said).toContain('declares water safe');
  });

  it('counts colonies by the letters of its language', () => {
    const counted = languages.map((language) => {
      const said = wordsOf(pagesWith(drawSheet(hand, 'A4', language), 'quality'));
      return [...new Set(said.match(/CFU|UFC/g))];
    });
    expect(counted).toEqual([['CFU'], ['UFC'], ['UFC']]);
  });

  /** Nitrate as N: 62.0049 / 14.0067 = 4.427, atomic masses of IUPAC (from memory). */
  it('shows a result as written beside the converted one, and what stands above in bold', () => {
    const record = {
      ...hand,
      quality: [{ results: [{ parameter: 'Nitrate', value: 20, unit: 'mg/l', as: 'N' }] }],
    };
    const pages = pagesWith(drawSheet(record, 'A4'), 'quality');
    const row = pages.flatMap(textsOn).filter(({ source }) => source === 'quality[0].results[0]');
    const texts = row.map(({ item }) => item.text);
    expect(texts.join(' ')).toContain('20 mg/l as N');
    expect(texts).toContain('88.5 mg/l');
    expect(texts).toContain('≤ 50 mg/l');
    const bold = row.filter(({ item }) => item.face === 'bold').map(({ item }) => item.text);
    expect(bold.join(' ')).toContain('above the value');
  });

  it('says what is asked for before handover and was not tested', () => {
    const record = { ...hand, quality: [{ results: [{ parameter: 'pH', value: 7 }] }] };
    const said = wordsOf(pagesWith(drawSheet(record, 'A4'), 'quality'));
    expect(said).toMatch(/before handover and not tested: E\. coli/);
    expect(said).toContain('not tested');
  });
});

describe('the pages of pumping tests', () => {
  const pages = pagesWith(drawSheet(hand, 'A4'), 'tests');

  it('draw a plot for each look at a test', () => {
    const plots = pages.flatMap(({ items }) => groupsNamed(items, 'plot'));
    const tests = plots.map(({ source }) => source);
    expect(tests.filter((one) => one === 'tests[0]')).toHaveLength(4);
    expect(tests.filter((one) => one === 'tests[1]')).toHaveLength(5);
    expect(tests.filter((one) => one === 'tests[2]')).toHaveLength(3);
  });

  it.each(languages)(
    'name in %s every sign of the curve and its derivative, and its smoothing',
    (language) => {
      const said = wordsOf(pagesWith(drawSheet(hand, 'A4', language), 'tests'));
      const { key, facts, smoothed } = testWordsIn(language);
      for (const name of [key.readings, key.derivative, key.curve, facts.derivative])
        expect(said).toContain(name);
      const L = language === 'en' ? '0.3' : '0,3';
      expect(said.replace(/\s+/g, ' ')).toContain(smoothed.replace('{smoothing}', L));
    },
  );

  it('lead from every reading back to the record', () => {
    const sources = pages
      .flatMap(placedOn)
      .filter(({ groups }) => groups.includes('readings'))
      .map(({ source }) => source);
    for (const at of [0, 1, 2])
      expect(sources).toContain(`tests[${at}].series[${hand.tests![at]!.series!.length - 1}]`);
  });

  it('say the safe rate with what it rests on', () => {
    const said = wordsOf(pages);
    expect(said).toContain('Safe rate in the dry season');
    expect(said).toContain('365 days of pumping');
    expect(said).toContain('Theis 1935');
  });
});
