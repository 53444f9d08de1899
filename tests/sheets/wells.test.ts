import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { drawSheet, paperNames, type DrawnSheet } from './drawn.ts';
import { brokenBy } from './laws/index.ts';
import { textsOn } from './placed.ts';
import { demoWells, exampleWells, publishedWells } from './wells.ts';

const others = languages.filter((language) => language !== 'en');

const wells = { demo: demoWells, published: publishedWells, awkward: exampleWells };

describe.each(Object.entries(wells))('the sheets of the %s wells', (_, list) => {
  it.each(list)('%s keep every law on A4 and A3', (_name, record) => {
    for (const paper of paperNames) expect(brokenBy(drawSheet(record, paper))).toEqual({});
  });
});

describe.each(others)('the sheets in %s', (language) => {
  it.each([...demoWells, ...exampleWells])('of %s keep every law on A4 and A3', (_, record) => {
    for (const paper of paperNames)
      expect(brokenBy(drawSheet(record, paper, language))).toEqual({});
  });
});

/** Texts of a sheet that were cut, but for what people wrote and what an ellipsis is right for. */
function cutWords({ drawing }: DrawnSheet): string[] {
  return drawing.pages.flatMap(textsOn).flatMap(({ item, groups, source }) => {
    const written = groups.includes('mark') || /^(site|identity)\./.test(source ?? '');
    return item.text.endsWith('…') && !written ? [`${groups.join(' ')}: ${item.text}`] : [];
  });
}

describe.each(languages)('the sheets of the demo wells in %s', (language) => {
  it.each(demoWells)('of %s cut no word of their own', (_, record) => {
    for (const paper of paperNames)
      expect(cutWords(drawSheet(record, paper, language))).toEqual([]);
  });
});

describe('the same record', () => {
  it.each([...demoWells, ...exampleWells])('%s gives the same drawing again', (_, record) => {
    for (const paper of paperNames) {
      const first = JSON.stringify(drawSheet(record, paper).drawing);
      expect(JSON.stringify(drawSheet(structuredClone(record), paper).drawing)).toBe(first);
    }
  });

  it('gives a drawing that JSON can carry whole', () => {
    for (const [, record] of [...demoWells, ...exampleWells]) {
      const { drawing } = drawSheet(record, 'A4');
      expect(JSON.parse(JSON.stringify(drawing))).toEqual(drawing);
    }
  });
});
