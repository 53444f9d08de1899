import { mmPerM, type PaperMm } from '../../../base/units.ts';
import { headHeight, type View } from '../../parts/columns.ts';
import type { Columns } from '../../parts/layColumns.ts';
import { descriptionsHeight } from '../../parts/descriptions.ts';
import {
  axisBottom,
  depthAt,
  depthScales,
  paperLength,
  yAt,
  type DepthAxis,
  type DepthRange,
} from '../../scale.ts';
import { hasPanel, layRemarks } from './blocks.ts';
import { bodyHeights, remarksKept, type Heights, type Rest } from './bodies.ts';
import { bestPlan } from './choose.ts';
import { cut, type Along, type Range } from './cut.ts';
import { extentOf, widthScaleOf } from './extent.ts';
import { detailsBegin } from './flowParts.ts';
import { besideDrawing, drawingWidth } from './foot.ts';
import { margin, matchMargin, type Plan } from './page.ts';
import { plainStretches, spareDepths } from './plainStretches.ts';
import type { SheetInput } from './sheetInput.ts';
import { columnsOf } from './shownColumns.ts';
import { spareRoom } from './wellPage.ts';
import { callsHeight } from './wellView.ts';

/** What all plans of a sheet share. */
interface Frame {
  readonly columns: Columns;
  readonly heights: Heights;
  /** The depths to show. */
  readonly extent: Range;
  /** Of diameters; undefined where none is known. */
  readonly widthScale: number | undefined;
  readonly remarksRoom: PaperMm;
}

/** How a sheet may be laid: at which scale, with the rest where, and which depths left out. */
interface Manner {
  readonly scale: number;
  readonly rest: Rest;
  readonly leftOut: readonly DepthRange[];
}

/** The axis of a page, with the breaks that lie on it. */
function axisOf(range: Range, { scale, leftOut }: Manner, top: PaperMm): DepthAxis {
  const own = leftOut.filter(({ fromM, toM }) => fromM >= range.fromM && toM <= range.toM);
  return { ...range, scale, top, ...(own.length > 0 && { leftOut: own }) };
}

/** The views of a well cut at given depths, each in the body that its page leaves. */
function viewsOf(
  input: SheetInput,
  manner: Manner,
  { columns, heights, widthScale }: Frame,
  ranges: readonly Range[],
): View[] {
  const { x, y } = input.paper.frame;
  return ranges.map((range, at) => {
    const last = at === ranges.length - 1;
    const height = last ? heights[manner.rest] : heights.full;
    const body = { x, y: y + headHeight, width: drawingWidth(input.paper), height };
    return {
      axis: axisOf(range, manner, body.y + (at === 0 ? margin : matchMargin)),
      columns,
      body,
      ...(widthScale !== undefined && { widthScale }),
      first: at === 0,
      last,
    };
  });
}

/** Depths along the paper, whose breaks take as much of it as their mark. */
function alongOf({ fromM, toM }: Range, { scale, leftOut }: Manner): Along {
  const axis = { fromM, toM, scale, top: 0, ...(leftOut.length > 0 && { leftOut }) };
  return {
    of: (depthM) => fromM + (yAt(axis, depthM) * scale) / mmPerM,
    depthAt: (along) => depthAt(axis, paperLength(along - fromM, scale)),
  };
}

/** A page may end no nearer to a break than this, so that the ruler has a figure between. */
const offBreak: PaperMm = 25;

/** Whether a page would end within a break or at it. */
function cutsBreak(ranges: readonly Range[], { scale, leftOut }: Manner): boolean {
  const offM = (offBreak * scale) / mmPerM;
  const ends = ranges.slice(0, -1).map(({ toM }) => toM);
  return ends.some((end) =>
    leftOut.some(({ fromM, toM }) => end > fromM - offM && end < toM + offM),
  );
}

/** The plan of one manner; none where the well does not fit so. */
function planFor(input: SheetInput, manner: Manner, frame: Frame): Plan[] {
  const { scale, rest, leftOut } = manner;
  const { fromM, toM } = frame.extent;
  const metresIn = (height: PaperMm, margins: PaperMm) => ((height - margins) * scale) / mmPerM;
  const last = frame.heights[rest];
  const along = leftOut.length > 0 ? alongOf(frame.extent, manner) : undefined;
  const length = along ? along.of(toM) - along.of(fromM) : toM - fromM;
  const ranges =
    length <= metresIn(last, 2 * margin)
      ? [{ fromM, toM }]
      : cut(
          fromM,
          toM,
          metresIn(frame.heights.full, 2 * matchMargin),
          metresIn(last, margin + matchMargin),
          along,
        );
  if (!ranges || cutsBreak(ranges, manner)) return [];
  const views = viewsOf(input, manner, frame, ranges);
  return [{ scale, rest, views, remarksRoom: frame.remarksRoom, spare: 0 }];
}

/** Height that the words and the well of a page need at least. */
function neededHeight({ kit, model, ...input }: SheetInput, view: View): PaperMm {
  return Math.max(
    axisBottom(view.axis) + margin - view.body.y,
    descriptionsHeight(kit, model.strata, view),
    callsHeight({ kit, model, ...input }, view),
  );
}

/** Less room than this stays with the drawing. */
const leastSpare: PaperMm = 45;

/** Leaves what the last page has to spare to the details, where they begin in it. */
function sparing(input: SheetInput, plan: Plan): Plan {
  const last = plan.views.at(-1)!;
  const needed = neededHeight(input, last) + 1;
  const spare = last.body.height - needed;
  if (spare < leastSpare || !detailsBegin(input, spareRoom(input, spare).height)) return plan;
  const view = { ...last, body: { ...last.body, height: needed } };
  return { ...plan, spare, views: [...plan.views.slice(0, -1), view] };
}

/**
 * Gives findings and notes under the well the height that the last page has to spare, and details
 * what is left.
 */
function settled(input: SheetInput, plan: Plan): Plan {
  if (plan.rest !== 'band') return plan;
  const last = plan.views.at(-1)!;
  const spare = Math.max(0, last.body.height - neededHeight(input, last) - 1);
  const kept = plan.remarksRoom;
  const room = kept + spare;
  const used = layRemarks(input, [], input.paper.frame.width, room)?.height;
  if (used === undefined) return sparing(input, plan);
  const body = { ...last.body, height: last.body.height + kept - used };
  const views = [...plan.views.slice(0, -1), { ...last, body }];
  return sparing(input, { ...plan, remarksRoom: room, views });
}

/** The rest stands beside the well where a sheet is wide; else under it, on its own page, or both. */
function restsFor(input: SheetInput): Rest[] {
  if (besideDrawing(input.paper)) return ['side'];
  return hasPanel(input) ? ['band', 'bandAndPage', 'ownPage'] : ['band', 'ownPage'];
}

/** A sheet shows at least this share of its well. */
const leastShown = 0.6;

const lengthOf = ({ fromM, toM }: DepthRange) => toM - fromM;

/** No break, the one that saves most, or the two that do, as long as most is shown. */
function breaksAt(plain: readonly DepthRange[], scale: number, whole: Range) {
  const spare = spareDepths(plain, scale);
  const counts = [0, 1, 2].filter((count) => count <= spare.length);
  const choices = counts.map((count) => spare.slice(0, count));
  const mostM = (1 - leastShown) * lengthOf(whole);
  return choices
    .filter(
      (some) => some.length === 0 || some.reduce((sum, one) => sum + lengthOf(one), 0) <= mostM,
    )
    .map((some) => some.toSorted((a, b) => a.fromM - b.fromM));
}

/** The scale of the preferred series, the pages and the breaks that show the well best. */
export function planSheet(input: SheetInput): Plan {
  const { model, brokenAxis = true } = input;
  const columns = columnsOf(input);
  const frame = {
    columns,
    heights: bodyHeights(input),
    extent: extentOf(model),
    widthScale: widthScaleOf(model, columns.section.width - 2),
    remarksRoom: remarksKept(input),
  };
  const rests = restsFor(input);
  const plain = brokenAxis ? plainStretches(model, frame.extent) : [];
  const plans = depthScales.flatMap((scale) =>
    breaksAt(plain, scale, frame.extent).flatMap((leftOut) =>
      rests.flatMap((rest) => planFor(input, { scale, rest, leftOut }, frame)),
    ),
  );
  const best = bestPlan(input, plans);
  if (!best) throw new Error('no preferred scale holds this well');
  return settled(input, best);
}
