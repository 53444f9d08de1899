import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { orientations, type Orientation, type PaperName } from '../../core/drawing/paper.ts';
import { drawSheet, paperNames } from './drawn.ts';
import { filledShare, thinPages } from './laws/filled.ts';
import { demoWells, exampleWells, publishedWells } from './wells.ts';

/** A plot with its residuals stands in one piece, which takes over half of a low page. */
const leastOf = (paper: PaperName, orientation: Orientation) =>
  paper === 'A4' && orientation === 'landscape' ? 0.3 : 0.5;

const ways = paperNames.flatMap((paper) =>
  orientations.map((orientation) => ({
    paper,
    orientation,
    least: leastOf(paper, orientation),
  })),
);

describe.each(ways)('no page of an $paper that lies $orientation is nearly empty', (way) => {
  const { paper, orientation, least } = way;

  it.each(demoWells)('of %s but the last, in each language', (_, record) => {
    for (const language of languages)
      expect(thinPages(drawSheet(record, paper, language, {}, { orientation }), least)).toEqual([]);
  });

  it.each([...publishedWells, ...exampleWells])('of %s but the last', (_, record) => {
    expect(thinPages(drawSheet(record, paper, 'en', {}, { orientation }), least)).toEqual([]);
  });
});

it('the share that is filled counts what stands on a page and not the white between', () => {
  const { drawing, paper } = drawSheet(demoWells[0]![1], 'A4');
  const [page] = drawing.pages;
  const bare = { ...page!, items: page!.items.filter(({ source }) => source === undefined) };
  expect(filledShare(page!, paper)).toBeGreaterThan(0.7);
  expect(filledShare({ ...bare, items: bare.items.slice(-2) }, paper)).toBe(0);
});
