import { expect, it } from 'vitest';
import { gridPlace } from '../../../../core/base/geo/utm.ts';
import { drawBackdrop } from '../../../../core/drawing/binder/map/backdrop.ts';
import { layMap } from '../../../../core/drawing/binder/map/layMap.ts';
import { isPlaced } from '../../../../core/drawing/binder/map/placedWell.ts';
import { mapSheets } from '../../../../core/drawing/binder/map/sheets.ts';
import { drawUtmGrid, utmGridOf } from '../../../../core/drawing/binder/map/utmGrid.ts';
import { fitView, fromPaper, toPaper } from '../../../../core/drawing/binder/map/view.ts';
import type { GroupItem, PathItem } from '../../../../core/drawing/items.ts';
import { placedOn, textsOn } from '../../../sheets/placed.ts';
import { contentOf, demoBinderWells, farPlaces, kitIn, manyWells } from './madeBinder.ts';

const kit = kitIn('en');
const box = { x: 20, y: 30, width: 150, height: 200 };

it('takes a place to paper and back', () => {
  const view = fitView([[12, 7], [13, 8.5]], box); // prettier-ignore
  const [longitude, latitude] = fromPaper(view, toPaper(view, [12.4, 7.9]));
  expect(longitude).toBeCloseTo(12.4, 9);
  expect(latitude).toBeCloseTo(7.9, 9);
});

it('shows every place that it is fitted to, with room round it', () => {
  const places = [[12, 7], [13, 8.5], [12.2, 7.1]] as const; // prettier-ignore
  const view = fitView(places, box);
  for (const place of places) {
    const [x, y] = toPaper(view, place);
    expect(x).toBeGreaterThan(box.x + 13);
    expect(x).toBeLessThan(box.x + box.width - 13);
    expect(y).toBeGreaterThan(box.y + 13);
    expect(y).toBeLessThan(box.y + box.height - 13);
  }
});

it('draws a single well at the largest scale', () => {
  expect(fitView([[12, 7]], box).scale).toBe(5000);
});

it('sets crosses where the lines of the grid meet', () => {
  const view = fitView([[13.1, 7.2], [13.3, 7.6]], box); // prettier-ignore
  const grid = utmGridOf(view)!;
  const { items } = drawUtmGrid(kit, view, grid) as GroupItem;
  const level = items
    .filter((item): item is PathItem => item.kind === 'path')
    .map(({ segments: [from, to] }) => [from!, to!] as const)
    .filter(([from, to]) => from[2] === to[2] && (to[1] as number) < box.x + box.width);
  expect(level.length).toBeGreaterThan(5);
  for (const [from, to] of level) {
    const [longitude, latitude] = fromPaper(view, [
      ((from[1] as number) + (to[1] as number)) / 2,
      from[2] as number,
    ]);
    const { eastingM, northingM } = gridPlace({ latitude, longitude })!;
    for (const metres of [eastingM, northingM])
      expect(Math.abs(metres / grid.stepM - Math.round(metres / grid.stepM))).toBeLessThan(1e-3);
  }
});

it('cuts a crowded map into sheets that show each well once under its own', () => {
  const wells = manyWells(300).filter(isPlaced);
  const sheets = mapSheets(kit, wells, box);
  expect(sheets.length).toBeGreaterThan(1);
  const ids = sheets.flatMap((sheet) => sheet.wells.map(({ id }) => id));
  expect([...ids].sort()).toEqual(wells.map(({ id }) => id).sort());
});

it('begins with an overview that numbers the sheets', () => {
  const content = contentOf(manyWells(300));
  const { pages, marks } = layMap(kit, content, farPlaces);
  const sheets = marks.filter(({ title }) => title.includes('sheet ')).length;
  const numbers = textsOn(pages[0]!).filter(({ groups }) => groups.includes('sheetFrames'));
  expect(marks[0]!.title).toBe('Location map: overview of the sheets');
  expect(numbers).toHaveLength(sheets);
});

it('names every well of its sheet, and lists those without a position', () => {
  const [first, ...rest] = demoBinderWells;
  const { position, ...without } = first!;
  expect(position).toBeDefined();
  const { pages } = layMap(kit, contentOf([without, ...rest]), farPlaces);
  const texts = pages.map((page) => textsOn(page).map(({ item }) => item.text));
  for (const { number } of rest) expect(texts[0]).toContain(number);
  expect(texts[0]).not.toContain(first!.number);
  expect(texts[1]).toContain('Wells without a position');
  expect(texts[1]).toContain(first!.number);
});

it('leads from each sign to the papers of its well', () => {
  const content = contentOf(demoBinderWells);
  const places = { ...farPlaces, pageOf: (id: string) => 100 + id.length };
  const links = layMap(kit, content, places)
    .pages.flatMap((page) => placedOn(page))
    .flatMap(({ item }) => (item.kind === 'link' ? [item.to] : []));
  const pages = content.wells.map(({ id }) => 100 + id.length).sort();
  expect(links.map((to) => ('page' in to ? to.page : 0)).sort()).toEqual(pages);
});

it('draws outlines of a backdrop apart from its lines, and leaves out what is not seen', () => {
  const view = fitView([[12, 7], [13, 8.5]], box); // prettier-ignore
  const { items, clip } = drawBackdrop(view, [
    { closed: true, lines: [[[12, 7], [13, 7], [13, 8], [12, 7]]] }, // prettier-ignore
    { closed: false, lines: [[[12, 7.5], [13, 7.6]]] }, // prettier-ignore
    { closed: false, lines: [[[40, 50], [41, 51]]] }, // prettier-ignore
  ]) as GroupItem;
  expect(clip).toEqual(box);
  expect(items.map((item) => (item as PathItem).stroke?.dash !== undefined)).toEqual([true, false]);
});
