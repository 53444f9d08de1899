import type { PaperMm } from '../../../base/units.ts';
import { descriptionsFit } from '../../parts/descriptions.ts';
import { paperLength } from '../../scale.ts';
import { hasPanel } from './blocks.ts';
import { hasOwnPage, type Plan } from './page.ts';
import type { SheetInput } from './sheetInput.ts';
import { callsFit } from './wellView.ts';

/** A layer or fill thinner than this on paper can hardly be read. */
const legibleMm: PaperMm = 2.2;

/** Parts thinner than this are a line on any sheet and say nothing for a larger scale. */
const alwaysThinM = 0.3;

/** Share of layers and fills that are too thin on paper to be read. */
function illegible({ model }: SheetInput, scale: number): number {
  const parts = [...model.strata, ...model.annulus]
    .map(({ fromM, toM }) => toM - fromM)
    .filter((metres) => metres >= alwaysThinM);
  if (parts.length === 0) return 0;
  return parts.filter((metres) => paperLength(metres, scale) < legibleMm).length / parts.length;
}

const pageCost = 13;

/** What a scale costs for being small: more than a page where the series offers no better. */
function smallScaleCost(scale: number): number {
  if (scale <= 500) return 0;
  return scale <= 1000 ? 14 : 30;
}

/** A page of its own costs little where it has much to say, else as much as a page of the well. */
function ownPageCost(input: SheetInput): number {
  return hasPanel(input) ? 4 : pageCost;
}

/** Lower is better: pages first, then what is too thin to read, then empty paper. */
function costOf(input: SheetInput, plan: Plan): number {
  const drawn = plan.views.reduce(
    (sum, { axis }) => sum + paperLength(axis.toM - axis.fromM, axis.scale),
    0,
  );
  const room = plan.views.reduce((sum, { body }) => sum + body.height, 0);
  return (
    plan.views.length * pageCost +
    (hasOwnPage(plan) ? ownPageCost(input) : 0) +
    (illegible(input, plan.scale) > 0.25 ? 25 : 0) +
    smallScaleCost(plan.scale) +
    Math.max(0, 0.6 - drawn / room) * 60 +
    Math.max(0, 1 - drawn / room) * 2
  );
}

/** What it costs when words must be shortened to stand beside the well. */
const crowdedCost = 35;

function isCrowded({ kit, model, ...input }: SheetInput, { views }: Plan): boolean {
  return views.some(
    (view) =>
      !descriptionsFit(kit, model.strata, view) || !callsFit({ kit, model, ...input }, view),
  );
}

/**
 * The cheapest plan. Words are measured only where a plan could still be the best. A plan that
 * has no room for words in full, neither beside the well nor in notes, is none.
 */
export function cheapest(input: SheetInput, plans: readonly Plan[]): Plan | undefined {
  const sorted = plans
    .map((plan) => ({ plan, cost: costOf(input, plan) }))
    .sort((a, b) => a.cost - b.cost);
  let best: { plan: Plan; cost: number } | undefined;
  for (const { plan, cost } of sorted) {
    if (best && best.cost <= cost) break;
    const crowded = isCrowded(input, plan);
    if (crowded && plan.rest === 'band') continue;
    const whole = cost + (crowded ? crowdedCost : 0);
    if (!best || whole < best.cost) best = { plan, cost: whole };
  }
  return best?.plan;
}
