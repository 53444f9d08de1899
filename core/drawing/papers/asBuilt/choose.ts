import type { PaperMm } from '../../../base/units.ts';
import type { View } from '../../parts/columns.ts';
import { descriptionsFit, descriptionsHeight } from '../../parts/descriptions.ts';
import { axisBottom, depthScales, paperLength } from '../../scale.ts';
import { layPanel } from './blocks.ts';
import { detailsHeight } from './flowParts.ts';
import { marksTop } from './foot.ts';
import { hasOwnPage, type Plan } from './page.ts';
import type { SheetInput } from './sheetInput.ts';
import { isBroken } from './wholeAxis.ts';
import { callsFit, callsHeight } from './wellView.ts';

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

/** A larger share of them is not borne. */
const mostIllegible = 0.25;

const pageCost = 12.4;

/** What a scale costs for being small: more than a page where the series offers no better. */
function smallScaleCost(scale: number): number {
  if (scale <= 200) return 0;
  if (scale <= 500) return 9;
  return scale <= 1000 ? 20 : 36;
}

/** What a page of its own would carry, by where the legend stands. */
interface OwnPages {
  readonly bandAndPage: PaperMm;
  readonly ownPage: PaperMm;
}

function ownPagesOf(input: SheetInput): OwnPages {
  const { width, height } = input.paper.frame;
  const details = detailsHeight(input);
  const panel = (withLegend: boolean) =>
    layPanel(input, [], width, height, withLegend).height + details;
  return { bandAndPage: panel(false), ownPage: panel(true) };
}

/** What it costs when the legend does not stand on the sheet of the drawing. */
const farLegendCost = 3.5;

/**
 * A page of its own costs less the more it has to say: 9 for a few lines, 1 for one that is full
 * with the details that need a page in any case.
 */
function ownPageCost({ rest }: Plan, pages: OwnPages): number {
  if (rest !== 'bandAndPage' && rest !== 'ownPage') return 0;
  const lines = Math.min(9, Math.max(1, 16 - pages[rest] / 8));
  return rest === 'ownPage' ? lines + farLegendCost : lines;
}

/** A broken axis hides no fact, but is harder to read than a whole one. */
function breaksCost({ views }: Plan): number {
  const count = views.reduce((sum, { axis }) => sum + (axis.leftOut?.length ?? 0), 0);
  return count === 0 ? 0 : 3 + 2 * count;
}

/** Lower is better: pages first, then what is too thin to read, then empty paper. */
function costOf(input: SheetInput, plan: Plan, pages: OwnPages): number {
  const drawn = plan.views.reduce((sum, view) => sum + drawnOn(view), 0);
  const room = plan.views.reduce((sum, { body }) => sum + body.height, 0);
  return (
    plan.views.length * pageCost +
    ownPageCost(plan, pages) +
    (illegible(input, plan.scale) > mostIllegible ? 25 : 0) +
    smallScaleCost(plan.scale) +
    breaksCost(plan) +
    Math.max(0, 0.68 - drawn / room) * 70 +
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

/** Height of paper that the well takes on a page. */
function drawnOn({ axis }: View): PaperMm {
  return axisBottom(axis) - axis.top;
}

/** Words that take up to this share of the length of the well beside them stand near their depth. */
const easyShare = 0.7;

/** What it costs when words crowd along the well, so that leaders must lead far up and down. */
function leadersCost({ kit, model, ...input }: SheetInput, { views }: Plan): number {
  const words = views.map((view) =>
    Math.max(
      descriptionsHeight(kit, model.strata, view),
      callsHeight({ kit, model, ...input }, view),
    ),
  );
  const longest = Math.max(...views.map(drawnOn));
  const over = views.map((view, at) => (words[at]! - easyShare * drawnOn(view)) / longest);
  return Math.min(20, Math.max(0, ...over) * 15);
}

/** Whether the same scale and pages leave room for the legend on the sheet of the drawing. */
function legendCouldStay(input: SheetInput, plan: Plan, plans: readonly Plan[]): boolean {
  const nearer = plans.find(
    ({ rest, scale, views }) =>
      rest === 'bandAndPage' && scale === plan.scale && views.length === plan.views.length,
  );
  return plan.rest === 'ownPage' && nearer !== undefined && !isCrowded(input, nearer);
}

/**
 * The cheapest plan. Words are measured only where a plan could still be the best. A plan that
 * has no room for words in full, neither beside the well nor in notes, is none.
 */
export function cheapest(input: SheetInput, plans: readonly Plan[]): Plan | undefined {
  const pages = ownPagesOf(input);
  const sorted = plans
    .map((plan) => ({ plan, cost: costOf(input, plan, pages) }))
    .sort((a, b) => a.cost - b.cost);
  let best: { plan: Plan; cost: number } | undefined;
  for (const { plan, cost } of sorted) {
    if (best && best.cost <= cost) break;
    const crowded = isCrowded(input, plan);
    if (crowded && plan.rest === 'band') continue;
    if (legendCouldStay(input, plan, plans)) continue;
    const whole = cost + leadersCost(input, plan) + (crowded ? crowdedCost : 0);
    if (!best || whole < best.cost) best = { plan, cost: whole };
  }
  return best?.plan;
}

const pagesOf = (plan: Plan) => plan.views.length + (hasOwnPage(plan) ? 1 : 0);

/** At this scale and larger ones a whole axis is read easily; no break need bring a larger one. */
const easyScale = 200;

/** A page of its own that is filled less looks forgotten. */
const leastOwn = 0.25;

function isThin(input: SheetInput, { rest }: Plan): boolean {
  if (rest !== 'bandAndPage' && rest !== 'ownPage') return false;
  const { paper } = input;
  return ownPagesOf(input)[rest] < leastOwn * (marksTop(paper) - paper.frame.y);
}

const nextSmaller = (scale: number) => depthScales.find((one) => one > scale) ?? scale;

/**
 * Where the page of its own would carry a few lines, a plan of fewer pages without one, at the next
 * smaller scale at most, as long as layers and words stay as legible.
 */
function withoutThinPage(input: SheetInput, best: Plan, plans: readonly Plan[]): Plan {
  if (!isThin(input, best)) return best;
  const most = nextSmaller(best.scale);
  const fits = Math.max(mostIllegible, illegible(input, best.scale));
  const fewer = plans.filter(
    (plan) =>
      pagesOf(plan) < pagesOf(best) &&
      !hasOwnPage(plan) &&
      !isBroken(plan) &&
      plan.scale <= most &&
      illegible(input, plan.scale) <= fits,
  );
  return cheapest(input, fewer) ?? best;
}

/** The cheapest plan; one with breaks only where they save a page or let a legible scale in. */
export function bestPlan(input: SheetInput, plans: readonly Plan[]): Plan | undefined {
  const best = cheapest(input, plans);
  if (!best) return best;
  if (!isBroken(best)) return withoutThinPage(input, best, plans);
  const whole = cheapest(
    input,
    plans.filter((plan) => !isBroken(plan)),
  );
  if (!whole) return best;
  const saves = pagesOf(best) < pagesOf(whole) && best.scale <= whole.scale;
  return saves || (whole.scale > easyScale && best.scale < whole.scale)
    ? best
    : withoutThinPage(input, whole, plans);
}
