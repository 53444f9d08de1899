import { expect, it } from 'vitest';
import { geodesicM } from '../../../../core/base/geo/geodesic.ts';
import type { SectionChoice } from '../../../../core/drawing/binder/binder.ts';
import type { BinderWell } from '../../../../core/drawing/binder/binderWell.ts';
import { sectionFrame, yAt } from '../../../../core/drawing/binder/section/frame.ts';
import { laySections } from '../../../../core/drawing/binder/section/laySections.ts';
import { sectionLine } from '../../../../core/drawing/binder/section/sectionLine.ts';
import type { PathItem, RegionItem } from '../../../../core/drawing/items.ts';
import { extentOf } from '../../../sheets/extent.ts';
import { groupsNamed, placedOn, textsOn } from '../../../sheets/placed.ts';
import { contentOf, demoBinderWells, farPlaces, kitIn, manyWells } from './madeBinder.ts';

const kit = kitIn('en');
const box = { x: 34, y: 80, width: 166, height: 120 };
const chosen: SectionChoice = { wellIds: demoBinderWells.map(({ id }) => id) };

function laid(wells: readonly BinderWell[], choice: SectionChoice) {
  return laySections(kit, contentOf(wells, { sections: [choice] }), farPlaces);
}

const said = (wells: readonly BinderWell[], choice: SectionChoice) =>
  laid(wells, choice)
    .pages.flatMap((page) => textsOn(page).map(({ item }) => item.text))
    .join(' ');

function without<K extends keyof BinderWell>(well: BinderWell, key: K): BinderWell {
  const { [key]: dropped, ...rest } = well;
  expect(dropped).toBeDefined();
  return rest as BinderWell;
}

/** Scales down and along, and how many times too large heights are drawn. */
function scalesOf(text: string): readonly [number, number, number] {
  const found = /1 : ([\d ]+), along 1 : ([\d ]+): heights are drawn ([\d.]+) times/.exec(text)!;
  const [down, along, times] = found.slice(1).map((figure) => Number(figure.replaceAll(' ', '')));
  return [down!, along!, times!];
}

it('adds up the geodesics from well to well', () => {
  const { wells } = sectionLine(chosen, demoBinderWells);
  const place = ({ position }: BinderWell) => ({
    latitude: position![1],
    longitude: position![0],
  });
  const steps = demoBinderWells
    .slice(1)
    .map((well, at) => geodesicM(place(demoBinderWells[at]!), place(well))!);
  expect(wells).toHaveLength(demoBinderWells.length);
  expect(wells.at(-1)!.alongM).toBeCloseTo(
    steps.reduce((sum, one) => sum + one, 0),
    6,
  );
});

it('draws each layer from its top to its foot at the stated scale', () => {
  const { pages } = laid(demoBinderWells, chosen);
  const { wells } = sectionLine(chosen, demoBinderWells);
  const columns = groupsNamed(pages[0]!.items, 'sectionColumn');
  const [scale] = scalesOf(said(demoBinderWells, chosen));
  expect(columns).toHaveLength(wells.length);
  columns.forEach(({ items }, at) => {
    const drawn = items.filter((item): item is RegionItem => item.kind === 'region');
    const layers = wells[at]!.well.layers.filter(({ hatch }) => hatch);
    expect(drawn).toHaveLength(layers.length);
    layers.forEach(({ fromM, toM }, n) => {
      const [, top, , foot] = extentOf(drawn[n]!);
      expect(foot - top).toBeCloseTo(((toM - fromM) * 1000) / scale, 6);
    });
  });
});

it('stands grounds apart by their elevations', () => {
  const { wells } = sectionLine(chosen, demoBinderWells);
  const frame = sectionFrame(wells, box);
  const [one, other] = wells as [(typeof wells)[0], (typeof wells)[0]];
  const apart = yAt(frame, one.groundM) - yAt(frame, other.groundM);
  expect(apart).toBeCloseTo(((other.groundM - one.groundM) * 1000) / frame.downScale, 6);
  for (const { groundM } of wells) expect(yAt(frame, groundM)).toBeGreaterThanOrEqual(box.y - 1e-9);
});

it('says which wells have no elevation, and draws their ground dashed', () => {
  const [first, ...rest] = demoBinderWells;
  const wells = [without(first!, 'elevationM'), ...rest];
  expect(said(wells, chosen)).toContain(
    `Elevation not recorded, drawn at the ground of the nearest well, dashed: ${first!.number}.`,
  );
});

it('says that nothing is told of slopes where no elevation is known', () => {
  const wells = demoBinderWells.map((well) =>
    well.elevationM === undefined ? well : without(well, 'elevationM'),
  );
  expect(sectionLine(chosen, wells).flat).toBe(true);
  expect(said(wells, chosen)).toContain('No elevation is on record');
});

it('names wells that it leaves out for want of a position', () => {
  const [first, ...rest] = demoBinderWells;
  const wells = [without(first!, 'position'), ...rest];
  expect(sectionLine(chosen, wells).left.map(({ number }) => number)).toEqual([first!.number]);
  expect(said(wells, chosen)).toContain(`for want of a position: ${first!.number}.`);
});

it('draws lines between wells only where a person asked for them', () => {
  const joinsOn = (choice: SectionChoice) =>
    groupsNamed(laid(demoBinderWells, choice).pages[0]!.items, 'joins').flatMap(
      ({ items }) => items,
    );
  expect(joinsOn(chosen)).toEqual([]);
  const [a, b, c] = chosen.wellIds as [string, string, string];
  const asked = {
    ...chosen,
    joins: [
      { from: { wellId: a, depthM: 4 }, to: { wellId: b, depthM: 6 } },
      { from: { wellId: a, depthM: 4 }, to: { wellId: c, depthM: 6 } },
    ],
  };
  const [line, ...more] = joinsOn(asked);
  expect((line as PathItem).stroke?.dash).toBeDefined();
  expect(more).toEqual([]);
  expect(said(demoBinderWells, asked)).toContain('they are an interpretation, not a measurement');
});

it('goes on over pages, each beginning with the last well of the one before', () => {
  const wells = manyWells(40);
  const placed = wells.filter(({ position }) => position).map(({ id }) => id);
  const { pages } = laid(wells, { wellIds: placed.slice(0, 25) });
  const counts = pages.map((page) => groupsNamed(page.items, 'sectionColumn').length);
  expect(counts.reduce((sum, one) => sum + one, 0)).toBe(25 + pages.length - 1);
  expect(Math.max(...counts)).toBeLessThanOrEqual(10);
});

it('states scales and exaggeration', () => {
  const [down, along, times] = scalesOf(said(demoBinderWells, chosen));
  expect(times / (along / down)).toBeCloseTo(1, 2);
});

it('leads from its table to the papers of the wells', () => {
  const [page] = laid(demoBinderWells, chosen).pages;
  const links = placedOn(page!).filter(({ item }) => item.kind === 'link');
  expect(links).toHaveLength(demoBinderWells.length);
});

it('says how many chosen wells the binder does not hold, and draws the others', () => {
  const [first, second] = demoBinderWells;
  const choice = { wellIds: [first!.id, 'elsewhere', second!.id] };
  expect(sectionLine(choice, demoBinderWells).absent).toBe(1);
  expect(said(demoBinderWells, choice)).toContain('but not in this binder: 1.');
  const nobody = said(demoBinderWells, { wellIds: ['elsewhere', 'far'] });
  expect(nobody).toContain('but not in this binder: 2.');
  expect(nobody).not.toContain('has a position');
});
