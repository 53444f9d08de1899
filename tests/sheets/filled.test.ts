import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import type { GroupItem, Page } from '../../core/drawing/items.ts';
import { orientations, type Orientation, type PaperName } from '../../core/drawing/paper.ts';
import { drawSheet, paperNames } from './drawn.ts';
import { extentOf } from './extent.ts';
import { filledShare, thinPages } from './laws/filled.ts';
import { groupsNamed, placedOn } from './placed.ts';
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

/** Upper and lower end of what stands in groups of a name. */
function spanOf(page: Page, name: string): readonly [top: number, foot: number] {
  const extents = placedOn(page)
    .filter(({ groups }) => groups.includes(name))
    .map(({ item }) => extentOf(item));
  return [Math.min(...extents.map((one) => one[1])), Math.max(...extents.map((one) => one[3]))];
}

/** White that a detail keeps over and under it. */
const roundDetail = 12;

it.each([...demoWells, ...exampleWells])(
  'on a lying A3 the details of %s begin beside the well where there is room',
  (_, record) => {
    const { pages } = drawSheet(record, 'A3', 'en', {}, { orientation: 'landscape' }).drawing;
    const last = pages.filter(({ items }) => groupsNamed(items, 'panel').length > 0).at(-1)!;
    const detailed = pages.find(({ items }) => groupsNamed(items, 'details').length > 0);
    if (!detailed || detailed === last) return;
    const [first] = groupsNamed(detailed.items, 'details')[0]!.items;
    const [top, foot] = spanOf({ ...detailed, items: [first!] }, (first as GroupItem).name!);
    const free = spanOf(last, 'marks')[0] - spanOf(last, 'panel')[1];
    expect(free).toBeLessThan(foot - top + roundDetail);
  },
);

/** Published wells of which a larger scale would leave a few lines to a second page. */
const shortOfTwo = ['2370644 BH05', '2370644 BH06', 'fra01 WS10', 'fra01 WS11', 'act.80000004'];

it.each(shortOfTwo)('%s stands on one page, and leaves no few lines to a second', (name) => {
  const [, record] = publishedWells.find(([one]) => one.endsWith(name))!;
  const sheet = drawSheet(record, 'A4');
  expect(sheet.drawing.pages).toHaveLength(1);
  expect(filledShare(sheet.drawing.pages[0]!, sheet.paper)).toBeGreaterThan(0.5);
});

it('the share that is filled counts what stands on a page and not the white between', () => {
  const { drawing, paper } = drawSheet(demoWells[0]![1], 'A4');
  const [page] = drawing.pages;
  const bare = { ...page!, items: page!.items.filter(({ source }) => source === undefined) };
  expect(filledShare(page!, paper)).toBeGreaterThan(0.7);
  expect(filledShare({ ...bare, items: bare.items.slice(-2) }, paper)).toBe(0);
});
