import type { View } from '../../parts/columns.ts';
import { axisBottom, depthScales, type DepthAxis } from '../../scale.ts';
import { margin, matchMargin, type Plan } from './page.ts';

export const isBroken = ({ views }: Plan): boolean =>
  views.some(({ axis }) => axis.leftOut !== undefined);

function wholeAxis({ fromM, toM, top }: DepthAxis, scale: number): DepthAxis {
  return { fromM, toM, top, scale };
}

function fits({ axis, body, last }: View, scale: number): boolean {
  const foot = body.y + body.height - (last ? margin : matchMargin);
  return axisBottom(wholeAxis(axis, scale)) <= foot;
}

/**
 * The same pages from the same depths to the same, with nothing left out: at the largest preferred
 * scale at which they hold what their breaks saved. For files that have no paper to save.
 */
export function wholePlan(plan: Plan): Plan {
  const scale = depthScales.find(
    (one) => one >= plan.scale && plan.views.every((view) => fits(view, one)),
  );
  if (scale === undefined) throw new Error('no preferred scale holds this well without breaks');
  const views = plan.views.map((view) => ({ ...view, axis: wholeAxis(view.axis, scale) }));
  return { ...plan, scale, views };
}
