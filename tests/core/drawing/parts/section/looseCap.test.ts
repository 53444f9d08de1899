import { describe, expect, it } from 'vitest';
import { layLegend } from '../../../../../core/drawing/parts/legend.ts';
import { layQuantities } from '../../../../../core/drawing/parts/quantities.ts';
import { centreOf } from '../../../../../core/drawing/parts/section/across.ts';
import { drawCasing } from '../../../../../core/drawing/parts/section/casing.ts';
import { casingCallouts } from '../../../../../core/drawing/parts/section/casingCallouts.ts';
import { group } from '../../../../../core/drawing/shapes.ts';
import type { Component } from '../../../../../core/record/strings.ts';
import { pipe110, resolve } from '../../../model/well.ts';
import { boundsOf, kit, pathsIn, view, within, wordsIn } from '../../trial.ts';

const well = (...caps: Component[]) =>
  resolve({
    strings: [
      { components: [...caps, { ...pipe110, length: 9 }], set: { by: 'bottom', depth: 9 } },
    ],
  });
const loose = well({ kind: 'cap' });

const capsOf = (model: ReturnType<typeof well>) =>
  within(drawCasing(model.strings[0]!, view)).filter(
    (one) => one.kind === 'group' && one.name === 'cap',
  );

describe('a cap whose length nobody wrote', () => {
  it('is drawn across the foot of the string, and leads to its row', () => {
    const [cap, ...more] = capsOf(loose);
    expect(more).toEqual([]);
    expect(cap!.source).toBe('strings[0].components[0]');
    const [left, top, right, foot] = boundsOf(pathsIn(cap!)[0]!);
    expect([left, right]).toEqual([centreOf(view) - 5.5, centreOf(view) + 5.5]); // 110 mm at 1:10
    expect(foot).toBe(110); // 9 m at 1:100, from 20
    expect(top).toBeLessThan(foot);
  });

  it('is not drawn where there is none, nor twice where it has a length', () => {
    expect(capsOf(well())).toEqual([]);
    expect(capsOf(well({ ...pipe110, kind: 'cap', length: 0.1 }))).toHaveLength(1);
  });

  it('is in the legend', () => {
    const legend = (model: ReturnType<typeof well>) =>
      wordsIn(group('legend', layLegend(kit, model, [], 100).draw(0, 0)));
    expect(legend(loose)).toContain('bottom cap');
    expect(legend(well())).not.toContain('bottom cap');
  });

  it('is counted among the quantities', () => {
    const words = wordsIn(group('quantities', layQuantities(kit, loose, 90)!.draw(0, 0)));
    expect(words).toContain('tally 9.00 m: 1 plain casing, 1 bottom cap');
  });

  it('is named at the depth of the foot', () => {
    const at = (depth: number) =>
      casingCallouts(kit, loose, view).find(({ figure, depthM }) => figure && depthM === depth);
    expect(at(9)?.text).toBe('bottom cap');
    expect(at(0)?.text).toBe('casing top');
  });
});
