import { describe, expect, it } from 'vitest';
import { paperOf } from '../../../../../core/drawing/paper.ts';
import { planSheet } from '../../../../../core/drawing/papers/asBuilt/plan.ts';
import { shownColumns } from '../../../../../core/drawing/papers/asBuilt/shownColumns.ts';
import { isBroken, wholePlan } from '../../../../../core/drawing/papers/asBuilt/wholeAxis.ts';
import { axisBottom, depthScales } from '../../../../../core/drawing/scale.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { longPlain } from '../../../../sheets/examples/longPlain.ts';
import { kit } from '../../sample.ts';

function planned(given: WellRecord) {
  const input = { record: given, model: resolveWell(given), kit, paper: paperOf('A3') };
  return planSheet({ ...input, columns: shownColumns(input, undefined) });
}

describe('a plan whose breaks are taken out', () => {
  const broken = planned(longPlain());
  const whole = wholePlan(broken);

  it('shows the same depths on the same pages', () => {
    expect([isBroken(broken), isBroken(whole)]).toEqual([true, false]);
    const depths = ({ views }: typeof whole) =>
      views.map(({ axis: { fromM, toM, top } }) => ({ fromM, toM, top }));
    expect(depths(whole)).toEqual(depths(broken));
    expect({ ...whole, scale: 0, views: [] }).toEqual({ ...broken, scale: 0, views: [] });
  });

  it('has the largest preferred scale that holds it', () => {
    const at = depthScales.findIndex((one) => one === whole.scale);
    expect(whole.scale).toBeGreaterThan(broken.scale);
    for (const { axis, body } of whole.views)
      expect(axisBottom(axis)).toBeLessThan(body.y + body.height);
    const larger = whole.views.map(({ axis }) => ({ ...axis, scale: depthScales[at - 1]! }));
    expect(
      larger.some(
        (axis, n) => axisBottom(axis) > whole.views[n]!.body.y + whole.views[n]!.body.height - 1.4,
      ),
    ).toBe(true);
  });

  it('is the same plan where there were none', () => {
    expect(wholePlan(whole)).toEqual(whole);
  });
});
