import { describe, expect, it } from 'vitest';
import { drawBoreWall } from '../../../../../core/drawing/parts/section/boreWall.ts';
import { isCut } from '../../../../../core/drawing/parts/section/across.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { groupsNamed } from '../../../../sheets/placed.ts';
import { resolve } from '../../../model/well.ts';
import { kit, pathsOf, pointsOf, viewOf, wordsOf } from '../../sample.ts';
import { built, edgesOf } from './well.ts';

const view = viewOf();
const wallsOf = (bore = built.bore, at = view) =>
  groupsNamed([drawBoreWall(kit, bore, at)], 'wall').map(({ items }) =>
    items.flatMap((one) => pathsOf(one).map(pointsOf)),
  );

describe('the wall of the hole', () => {
  it('stands half a diameter from the centre at the stated scale, over its depths', () => {
    const [upper, lower] = wallsOf();
    for (const [walls, mm, from, to] of [
      [upper!, 250, 0, 6],
      [lower!, 160, 6, 20],
    ] as const) {
      const xs = walls.map(([start]) => start![0]);
      expect(xs).toEqual(edgesOf(view, mm).map((x) => expect.closeTo(x, 9)));
      for (const [start, end] of walls)
        expect([start![1], end![1]]).toEqual([yAt(view.axis, from), yAt(view.axis, to)]);
    }
  });

  it('steps where the diameter changes, and closes at the foot', () => {
    const steps = pathsOf(drawBoreWall(kit, built.bore, view))
      .map(pointsOf)
      .filter(([a, b]) => a![1] === b![1]);
    const heights = steps.map(([a]) => a![1]);
    expect(heights).toEqual([6, 6, 20].map((depth) => yAt(view.axis, depth)));
    expect(steps[2]!.map(([x]) => x)).toEqual(edgesOf(view, 160).map((x) => expect.closeTo(x, 9)));
  });

  it('is a break line where a dug part is wider than the column', () => {
    const { bore } = resolve({ bore: { sections: [{ from: 0, to: 9, diameter: 1200 }] } });
    const [walls] = wallsOf(bore);
    expect(isCut(view, 1200)).toBe(true);
    expect(walls![0]!.length).toBeGreaterThan(3);
    const { x, width } = view.columns.section;
    for (const [px] of walls!.flat()) {
      expect(px).toBeGreaterThanOrEqual(x);
      expect(px).toBeLessThanOrEqual(x + width);
    }
  });

  it('is dashed with a question mark where no diameter is known', () => {
    const drawn = drawBoreWall(kit, resolve({ bore: { depthReached: 15 } }).bore, view);
    expect(pathsOf(drawn).every(({ stroke }) => stroke!.dash !== undefined)).toBe(true);
    expect(wordsOf(drawn)).toEqual(['?']);
    const lowest = Math.max(...pathsOf(drawn).flatMap((one) => pointsOf(one).map(([, y]) => y)));
    expect(lowest).toBe(yAt(view.axis, 15));
  });

  it('shows the depth found before casing by a dashed line', () => {
    const { bore } = resolve({
      bore: { sections: [{ from: 0, to: 20, diameter: 160 }], depthReached: 20, depthFound: 18.5 },
    });
    const found = pathsOf(drawBoreWall(kit, bore, view)).find(
      ({ source }) => source === 'bore.depthFound',
    )!;
    expect(pointsOf(found).map(([, y]) => y)).toEqual([18.5, 18.5].map((d) => yAt(view.axis, d)));
    expect(found.stroke!.dash).toBeDefined();
  });
});
