import { expect, it } from 'vitest';
import { gridPlace } from '../../../../core/base/geo/utm.ts';
import { drawBackdrop } from '../../../../core/drawing/binder/map/backdrop.ts';
import { layMap } from '../../../../core/drawing/binder/map/layMap.ts';
import { isPlaced } from '../../../../core/drawing/binder/map/placedWell.ts';
import { mapLabels } from '../../../../core/drawing/binder/map/labels.ts';
import { outlineNames } from '../../../../core/drawing/binder/map/outlineNames.ts';
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

it('names every well on the sheet of its own, in no more sheets than a hundred wells each ask', () => {
  const wells = manyWells(1000).filter(isPlaced);
  const sheets = mapSheets(kit, wells, box);
  expect(sheets.length).toBeLessThan(20);
  for (const { view, wells: own } of sheets) {
    const others = wells.filter((well) => !own.includes(well));
    const labels = mapLabels(kit, view, own, others);
    expect(labels.filter((label) => label.own && !label.at)).toEqual([]);
    expect(labels.filter((label) => label.own)).toHaveLength(own.length);
  }
});

it('ties a label that stands off its sign to it by a line', () => {
  const wells = manyWells(100).filter(isPlaced);
  const view = fitView(
    wells.map(({ position }) => position),
    box,
  );
  const labels = mapLabels(kit, view, wells);
  const { pages } = layMap(kit, contentOf(wells), farPlaces);
  const says = textsOn(pages[0]!).map(({ item }) => item.text).join(' '); // prettier-ignore
  expect(says).toContain('A thin line ties a number to its sign.');
  const led = labels.filter(({ leader }) => leader !== undefined);
  expect(led.length).toBeGreaterThan(0);
  for (const { point, leader, at, width } of led) {
    const [from, to] = leader!;
    expect(Math.hypot(from[0] - point[0], from[1] - point[1])).toBeLessThan(1.5);
    expect(to[0]).toBeGreaterThan(at![0] - 1);
    expect(to[0]).toBeLessThan(at![0] + width + 1);
  }
});

it('writes the name of an outline in it, clear of signs, and of no line or nameless one', () => {
  const view = fitView([[12, 7], [13, 8.5]], box); // prettier-ignore
  const lines = [[[11.9, 6.9], [13.1, 6.9], [13.1, 8.6], [11.9, 8.6], [11.9, 6.9]]] as const; // prettier-ignore
  const wells = manyWells(30).filter(isPlaced);
  const labels = mapLabels(kit, view, wells);
  const more = { named: true, taken: [] };
  const shapes = [
    { name: 'Kelumvara', closed: true, lines },
    { closed: true, lines },
    { name: 'Ruwa', closed: false, lines },
  ];
  const names = outlineNames(kit, view, shapes, labels, more);
  expect(names.map(({ text }) => text)).toEqual(['Kelumvara']);
  const [{ at: [x, y], width }] = names as [(typeof names)[number]]; // prettier-ignore
  for (const { point } of labels)
    expect(point[0] < x || point[0] > x + width || point[1] < y - 2.5 || point[1] > y).toBe(true);
  const far = { name: 'Far', closed: true, lines: [[[40, 50], [41, 50], [41, 51], [40, 50]]] } as const; // prettier-ignore
  expect(outlineNames(kit, view, [far], labels, more)).toEqual([]);
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
