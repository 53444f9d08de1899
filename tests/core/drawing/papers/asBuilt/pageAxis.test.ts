import { describe, expect, it } from 'vitest';
import type { Item, Page } from '../../../../../core/drawing/items.ts';
import { depthOf, yOf } from '../../../../../core/drawing/scale.ts';
import { fileNames, well } from '../../../../demo-data/wells.ts';
import { drawSheet, paperNames } from '../../../../sheets/drawn.ts';

const flat = (items: readonly Item[]): Item[] =>
  items.flatMap((item) => (item.kind === 'group' ? [item, ...flat(item.items)] : [item]));

/** Top and foot of each body of the log on a page, by its path. */
function bodies(page: Page): { source: string; top: number; foot: number; left: number }[] {
  const ground = flat(page.items).find((one) => one.kind === 'group' && one.name === 'ground');
  if (ground?.kind !== 'group') return [];
  return flat(ground.items).flatMap((item) => {
    if (item.kind !== 'region' || item.source === undefined) return [];
    const ys = item.segments.flatMap((one) => (one[0] === 'Z' ? [] : [one[2]]));
    const xs = item.segments.flatMap((one) => (one[0] === 'Z' ? [] : [one[1]]));
    const [top, foot] = [Math.min(...ys), Math.max(...ys)];
    return [{ source: item.source, top, foot, left: Math.min(...xs) }];
  });
}

describe('where depth lies on a page', () => {
  it.each(fileNames.flatMap((name) => paperNames.map((paper) => [name, paper] as const)))(
    'agrees with the layers drawn there: %s on %s',
    (name, paper) => {
      const { drawing, model } = drawSheet(well(name), paper);
      const seen = drawing.pages.flatMap((page) => bodies(page));
      expect(new Set(seen.map(({ source }) => source)).size).toBe(
        new Set(model.strata.map(({ path }) => path)).size,
      );
      for (const page of drawing.pages)
        for (const axis of page.axes ?? [])
          for (const { source, top, foot, left } of bodies(page)) {
            const strata = model.strata.filter(({ path }) => path === source);
            const between = strata.some(
              ({ fromM, toM }) =>
                depthOf(axis, top) >= fromM - 0.01 && depthOf(axis, foot) <= toM + 0.01,
            );
            expect({ source, between }).toEqual({ source, between: true });
            expect(left).toBeGreaterThanOrEqual(axis.spans.ground.x - 0.01);
          }
    },
  );

  it('goes on from page to page without a gap, and is absent where no well is drawn', () => {
    const { pages } = drawSheet(well('sixty-intervals-58m.json'), 'A4').drawing;
    const axes = pages.flatMap((page) => page.axes ?? []);
    expect(axes.length).toBeGreaterThan(1);
    for (const [at, axis] of axes.slice(1).entries()) expect(axis.fromM).toBe(axes[at]!.toM);
    for (const axis of axes) {
      expect(yOf(axis, axis.fromM)).toBeGreaterThanOrEqual(axis.box.y);
      expect(yOf(axis, axis.toM)).toBeLessThanOrEqual(axis.box.y + axis.box.height);
    }
  });

  it('says how wide a diameter is drawn, where one is known', () => {
    const [first] = drawSheet(well('hand-drilled-32m.json'), 'A4').drawing.pages;
    const bare = drawSheet({ schemaVersion: 1, log: [{ from: 0, to: 4 }] }, 'A4').drawing.pages[0];
    const texts = flat(first!.items).flatMap((item) => (item.kind === 'text' ? [item.text] : []));
    const { mmPerM, mmPerMm } = first!.axes![0]!;
    const printed = new RegExp(
      `^1:${Math.round(1000 / mmPerM)}, .* 1:${Math.round(1 / mmPerMm!)}$`,
    );
    expect(texts.some((text) => printed.test(text))).toBe(true);
    expect(bare!.axes![0]).not.toHaveProperty('mmPerMm');
  });
});
