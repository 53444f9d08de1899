import { describe, expect, it } from 'vitest';
import { paperOf, type PaperName } from '../../../../../core/drawing/paper.ts';
import { bodyHeights } from '../../../../../core/drawing/papers/asBuilt/bodies.ts';
import { cheapest } from '../../../../../core/drawing/papers/asBuilt/choose.ts';
import { hasOwnPage, type Plan } from '../../../../../core/drawing/papers/asBuilt/page.ts';
import { planSheet } from '../../../../../core/drawing/papers/asBuilt/plan.ts';
import { shownColumns } from '../../../../../core/drawing/papers/asBuilt/shownColumns.ts';
import type { SheetInput } from '../../../../../core/drawing/papers/asBuilt/sheetInput.ts';
import { axisBottom, depthScales } from '../../../../../core/drawing/scale.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { well } from '../../../../demo-data/wells.ts';
import { longPlain } from '../../../../sheets/examples/longPlain.ts';
import { wordyLog } from '../../../../sheets/examples/wordyLog.ts';
import { record } from '../../../model/well.ts';
import { kit } from '../../sample.ts';

function inputOf(given: WellRecord, paper: PaperName = 'A4'): SheetInput {
  const input = { record: given, model: resolveWell(given), kit, paper: paperOf(paper) };
  return { ...input, columns: shownColumns(input, undefined) };
}

const holeOf = (toM: number) =>
  record({
    bore: { sections: [{ from: 0, to: toM, diameter: 160 }] },
    log: [{ from: 0, to: toM, material: 'sand' }],
  });

const planned = (given: WellRecord, paper?: PaperName) => planSheet(inputOf(given, paper));

describe('the plan of a sheet', () => {
  it('is of the preferred scales, and the smaller the deeper the well is', () => {
    const scales = [3, 9, 30, 80, 200].map((toM) => planned(holeOf(toM)).scale);
    for (const scale of scales) expect(depthScales).toContain(scale);
    expect([...scales].sort((a, b) => a - b)).toEqual(scales);
    expect(new Set(scales).size).toBeGreaterThan(2);
  });

  it('has its axis within the body on every page', () => {
    for (const paper of ['A4', 'A3'] as const)
      for (const name of ['telescoped-in-granite.json', 'sixty-intervals-58m.json'])
        for (const { axis, body } of planned(well(name), paper).views) {
          expect(axis.top).toBeGreaterThan(body.y);
          expect(axisBottom(axis)).toBeLessThan(body.y + body.height);
        }
  });

  it('says which page is the first and which the last', () => {
    const { views } = planned(well('sixty-intervals-58m.json'));
    expect(views.length).toBeGreaterThan(1);
    expect(views.map(({ first }) => first)).toEqual(views.map((_, at) => at === 0));
    expect(views.map(({ last }) => last)).toEqual(views.map((_, at) => at === views.length - 1));
  });

  it('gives wells of many beds a larger scale on a further page before their words crowd', () => {
    for (const name of ['laid-out-45m.json', 'two-screens-58m.json']) {
      const { scale, views } = planned(well(name));
      expect([scale, views.length]).toEqual([200, 2]);
    }
    expect(planned(holeOf(85)).views).toHaveLength(1);
  });

  it('breaks the axis of a plain well where that lets a legible scale in, unless told not to', () => {
    const input = inputOf(longPlain(), 'A3');
    const broken = planSheet(input);
    const whole = planSheet({ ...input, brokenAxis: false });
    expect(broken.views[0]!.axis.leftOut).toEqual([{ fromM: 16, toM: 38 }]);
    expect(whole.views[0]!.axis.leftOut).toBeUndefined();
    const better = broken.scale < whole.scale || broken.views.length < whole.views.length;
    expect(better).toBe(true);
  });

  it('never leaves out most of a well', () => {
    const { views } = planned(holeOf(600));
    for (const { axis } of views)
      for (const { fromM, toM } of axis.leftOut ?? []) expect(toM - fromM).toBeLessThan(600 / 2);
  });

  it('puts all at the side of the well on A3', () => {
    expect(planned(well('hand-drilled-32m.json'), 'A3').rest).toBe('side');
  });

  it('takes a page of its own where words were cut that must stand in full', () => {
    expect(hasOwnPage(planned(wordyLog()))).toBe(true);
    expect(hasOwnPage(planned(holeOf(12)))).toBe(false);
  });
});

describe('the heights of bodies', () => {
  it('are the smaller, the more stands under the well', () => {
    const heights = bodyHeights(inputOf(well('hand-drilled-32m.json')));
    expect(heights.band).toBeLessThan(heights.bandAndPage);
    expect(heights.bandAndPage).toBeLessThan(heights.ownPage);
    expect(heights.ownPage).toBe(heights.full);
    expect(heights.full).toBeLessThan(heights.side);
  });
});

describe('the cheapest plan', () => {
  it('is none where there is none', () => {
    expect(cheapest(inputOf(holeOf(9)), [])).toBeUndefined();
  });

  it('is the one with fewer pages, all else being alike', () => {
    const input = inputOf(holeOf(9));
    const one = planned(holeOf(9));
    const two: Plan = { ...one, views: [...one.views, ...one.views] };
    expect(cheapest(input, [two, one])).toBe(one);
  });
});
