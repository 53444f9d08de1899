import type { DepthM, PaperMm } from '../../../base/units.ts';
import { depthScales, paperLength } from '../../scale.ts';
import { headHeight, layColumns, type Columns, type View } from '../../parts/columns.ts';
import { descriptionsFit } from '../../parts/descriptions.ts';
import { hasRates } from '../../parts/rate.ts';
import { scaleBarsHeight } from '../../parts/scaleBars.ts';
import { marksHeight } from '../../parts/markBoxes.ts';
import { titleBlockHeight } from '../../parts/titleBlock.ts';
import { callsFit } from './wellView.ts';
import { layBand, layRemarks } from './blocks.ts';
import { extentOf, widthScaleOf } from './extent.ts';
import type { SheetInput } from './sheetInput.ts';

/**
 * Where legend, quantities and particulars stand: all under the well, the first two under it and
 * the rest on a page of its own, all on a page of its own, or at the side of a lying A3.
 */
export type Rest = 'band' | 'bandAndPage' | 'ownPage' | 'side';

/** How a well is cut into pages and at which scale. */
export interface Plan {
  readonly scale: number;
  readonly views: readonly View[];
  readonly rest: Rest;
}

export function hasOwnPage({ rest }: Plan): boolean {
  return rest === 'bandAndPage' || rest === 'ownPage';
}

/** Width of the drawing: all of an A4, what the title block leaves of an A3. */
export function drawingWidth({ paper }: SheetInput): PaperMm {
  return paper.name === 'A3' ? paper.frame.width - 180 : paper.frame.width;
}

/** Space between the body's edge and the ends of the well, and where a match line stands. */
const margin: PaperMm = 1.2;
const matchMargin: PaperMm = 4.5;
const mostPages = 8;
/** A layer or fill thinner than this on paper can hardly be read. */
const legibleMm: PaperMm = 2.2;
/** Kept free for findings and notes under the well when all stands on one page. */
export const leastRemarks: PaperMm = 12;

type Heights = Readonly<Record<Rest, PaperMm>> & { readonly full: PaperMm };

/** Height of the drawing's body on its last page, by what stands under it; `full` on the others. */
function bodyHeights(input: SheetInput): Heights {
  const { frame, name } = input.paper;
  const side = frame.height - headHeight - scaleBarsHeight;
  const full = side - titleBlockHeight;
  const band = layBand(input, frame.width, false).height + marksHeight;
  const all = layBand(input, frame.width, true).height + marksHeight;
  const remarks = layRemarks(input, [], frame.width, leastRemarks) ? leastRemarks : 0;
  return {
    full: name === 'A3' ? side : full,
    side,
    ownPage: full,
    bandAndPage: full - band,
    band: full - all - remarks,
  };
}

interface Range {
  readonly fromM: DepthM;
  readonly toM: DepthM;
}

/** The roundest depth in a range that is near the wish; the range's end where none is round. */
function roundCut(wished: DepthM, leastM: DepthM, mostM: DepthM): DepthM {
  for (const step of [10, 5, 1, 0.5]) {
    const near = Math.min(Math.round(wished / step), Math.floor(mostM / step + 1e-9)) * step;
    if (near >= leastM && near <= mostM + 1e-9 && Math.abs(near - wished) <= step) return near;
  }
  return mostM;
}

/** Cuts a length into pages of `fullM`, the last of `lastM`. Undefined when it takes too many. */
function cut(fromM: DepthM, toM: DepthM, fullM: number, lastM: number): Range[] | undefined {
  if (lastM <= 0 || fullM <= 0) return undefined;
  const pages = 1 + Math.max(1, Math.ceil((toM - fromM - lastM) / fullM - 1e-9));
  if (pages > mostPages) return undefined;
  const share = (toM - fromM) / (fullM * (pages - 1) + lastM);
  const ranges: Range[] = [];
  let at = fromM;
  for (let left = pages - 1; left > 0; left -= 1) {
    const end = roundCut(at + share * fullM, toM - lastM - (left - 1) * fullM, at + fullM);
    ranges.push({ fromM: at, toM: end });
    at = end;
  }
  return [...ranges, { fromM: at, toM }];
}

interface Frame {
  readonly columns: Columns;
  readonly heights: Heights;
}

/** The views of a well cut at given depths, each in the body that its page leaves. */
function viewsOf(
  input: SheetInput,
  scale: number,
  rest: Rest,
  { columns, heights }: Frame,
  ranges: readonly Range[],
): View[] {
  const { x, y } = input.paper.frame;
  const widthScale = widthScaleOf(input.model, columns.section.width - 2);
  return ranges.map((range, at) => {
    const last = at === ranges.length - 1;
    const height = last ? heights[rest] : heights.full;
    const body = { x, y: y + headHeight, width: drawingWidth(input), height };
    return {
      axis: { ...range, scale, top: body.y + (at === 0 ? margin : matchMargin) },
      columns,
      body,
      ...(widthScale !== undefined && { widthScale }),
      first: at === 0,
      last,
    };
  });
}

function planFor(input: SheetInput, scale: number, rest: Rest, frame: Frame): Plan[] {
  const { fromM, toM } = extentOf(input.model);
  const metresIn = (height: PaperMm, margins: PaperMm) => ((height - margins) * scale) / 1000;
  const last = frame.heights[rest];
  const single = metresIn(last, 2 * margin);
  const ranges =
    toM - fromM <= single
      ? [{ fromM, toM }]
      : cut(
          fromM,
          toM,
          metresIn(frame.heights.full, 2 * matchMargin),
          metresIn(last, margin + matchMargin),
        );
  return ranges ? [{ scale, rest, views: viewsOf(input, scale, rest, frame, ranges) }] : [];
}

/** Share of layers and fills that are too thin on paper to be read. */
function illegible({ model }: SheetInput, scale: number): number {
  const parts = [...model.strata, ...model.annulus].map(({ fromM, toM }) => toM - fromM);
  if (parts.length === 0) return 0;
  return parts.filter((metres) => paperLength(metres, scale) < legibleMm).length / parts.length;
}

/** Lower is better: pages first, then what is too thin to read, then empty paper. */
function costOf(input: SheetInput, plan: Plan): number {
  const drawn = plan.views.reduce(
    (sum, { axis }) => sum + paperLength(axis.toM - axis.fromM, axis.scale),
    0,
  );
  const room = plan.views.reduce((sum, { body }) => sum + body.height, 0);
  return (
    plan.views.length * 13 +
    (hasOwnPage(plan) ? 4 : 0) +
    (illegible(input, plan.scale) > 0.25 ? 25 : 0) +
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

/** The cheapest plan. Words are measured only where a plan could still be the best. */
function cheapest(input: SheetInput, plans: readonly Plan[]): Plan | undefined {
  const sorted = plans
    .map((plan) => ({ plan, cost: costOf(input, plan) }))
    .sort((a, b) => a.cost - b.cost);
  let best: { plan: Plan; cost: number } | undefined;
  for (const { plan, cost } of sorted) {
    if (best && best.cost <= cost) break;
    const whole = cost + (isCrowded(input, plan) ? crowdedCost : 0);
    if (!best || whole < best.cost) best = { plan, cost: whole };
  }
  return best?.plan;
}

/** The scale of the preferred series, and the pages, that show the well best. */
export function planSheet(input: SheetInput): Plan {
  const { paper, model } = input;
  const columns = layColumns(paper.frame.x, drawingWidth(input), hasRates(model.strata));
  const frame = { columns, heights: bodyHeights(input) };
  const rests: Rest[] = paper.name === 'A3' ? ['side'] : ['band', 'bandAndPage', 'ownPage'];
  const plans = depthScales.flatMap((scale) =>
    rests.flatMap((rest) => planFor(input, scale, rest, frame)),
  );
  const best = cheapest(input, plans);
  if (!best) throw new Error('no preferred scale holds this well');
  return best;
}
