import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { randomWell } from '../laws/randomWell.ts';
import type { DrawnSheet } from './drawn.ts';
import { awkwardTallies } from './awkwardTallies.ts';
import { brokenByLaidOut, drawLaidOut } from './layingOut.ts';
import { capitalsHigh } from './measure.ts';
import { textsOn } from './placed.ts';
import { demoWells, exampleWells, publishedWells } from './wells.ts';
import { wordyWell } from './wordyWell.ts';

const awkward = [...exampleWells, ...Object.entries(awkwardTallies)];

describe.each(languages)('the laying-out sheets in %s', (language) => {
  it.each([...demoWells, ...awkward])('of %s keep every law that they are under', (_, record) => {
    expect(brokenByLaidOut(drawLaidOut(record, language))).toEqual({});
  });
});

it.each(publishedWells)('the laying-out sheet of %s keeps them too', (_, record) => {
  expect(brokenByLaidOut(drawLaidOut(record))).toEqual({});
});

it('sheets of random wells keep them', () => {
  fc.assert(
    fc.property(randomWell, fc.constantFrom(...languages), (record, language) => {
      expect(brokenByLaidOut(drawLaidOut(record, language))).toEqual({});
    }),
    { numRuns: 120, seed: 20260203 },
  );
});

it('sheets of wells with all that people write keep them', () => {
  fc.assert(
    fc.property(wordyWell, fc.constantFrom(...languages), (record, language) => {
      expect(brokenByLaidOut(drawLaidOut(record, language))).toEqual({});
    }),
    { numRuns: 120, seed: 20260204 },
  );
});

/** Sources of all that one table of a sheet says, over all its pages. */
function sourcesIn({ drawing }: DrawnSheet, table: string): Set<string> {
  const texts = drawing.pages.flatMap(textsOn).filter(({ groups }) => groups.includes(table));
  return new Set(texts.flatMap(({ source }) => source ?? []));
}

it.each([...demoWells, ...awkward])('every pipe and fill of %s has its row', (_, record) => {
  const sheet = drawLaidOut(record);
  const { strings, annulus } = sheet.model;
  const pipes = strings.flatMap(({ pieces }) => pieces.map(({ path }) => path));
  const fills = annulus.flatMap(({ path }) => path ?? []);
  expect([...sourcesIn(sheet, 'pipes')]).toEqual(expect.arrayContaining(pipes));
  expect([...sourcesIn(sheet, 'fills')]).toEqual(expect.arrayContaining(fills));
});

describe.each(languages)('the laying-out sheets of the demo wells in %s', (language) => {
  it.each(demoWells)('of %s cut no word of their own', (_, record) => {
    const texts = drawLaidOut(record, language).drawing.pages.flatMap(textsOn);
    const written = /^(site|identity|layingOut)\./;
    const cut = texts.filter(
      ({ item, source }) => item.text.endsWith('…') && !written.test(source ?? ''),
    );
    expect(cut.map(({ item }) => item.text)).toEqual([]);
  });

  // As the sheet is asked to be read at arm's length: common practice on sites.
  it.each(demoWells)('of %s set words of tables at 2.5 mm or more', (_, record) => {
    const { drawing } = drawLaidOut(record, language);
    const tables = ['pipes', 'paint', 'fills'];
    const texts = drawing.pages.flatMap(textsOn);
    const small = texts.filter(
      ({ groups, item }) =>
        groups.some((one) => tables.includes(one)) && capitalsHigh(item.em) < 2.5 - 1e-6,
    );
    expect(small.map(({ item }) => item.text)).toEqual([]);
  });
});
