import type { PaperMm } from '../../../base/units.ts';
import { headHeight, layColumns, type Columns, type View } from '../../parts/columns.ts';
import { descriptionsHeight } from '../../parts/descriptions.ts';
import { hasRates } from '../../parts/rate.ts';
import { axisBottom, depthScales } from '../../scale.ts';
import { hasPanel, layRemarks } from './blocks.ts';
import { bodyHeights, drawingWidth, remarksKept, type Heights, type Rest } from './bodies.ts';
import { cheapest } from './choose.ts';
import { cut, type Range } from './cut.ts';
import { extentOf, widthScaleOf } from './extent.ts';
import { besideDrawing } from './foot.ts';
import type { Plan } from './page.ts';
import type { SheetInput } from './sheetInput.ts';
import { callsHeight } from './wellView.ts';

/** Space between the body's edge and the ends of the well, and where a match line stands. */
const margin: PaperMm = 1.2;
const matchMargin: PaperMm = 4.5;

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

/** The views of a well cut at given depths, each in the body that its page leaves. */
function viewsOf(
  input: SheetInput,
  scale: number,
  rest: Rest,
  { columns, heights, widthScale }: Frame,
  ranges: readonly Range[],
): View[] {
  const { x, y } = input.paper.frame;
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

/** The plan of one scale and one place for the rest; none where the well does not fit so. */
function planFor(input: SheetInput, scale: number, rest: Rest, frame: Frame): Plan[] {
  const { fromM, toM } = frame.extent;
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
  if (!ranges) return [];
  const views = viewsOf(input, scale, rest, frame, ranges);
  return [{ scale, rest, views, remarksRoom: frame.remarksRoom }];
}

/** Height that the words and the well of a page need at least. */
function neededHeight({ kit, model, ...input }: SheetInput, view: View): PaperMm {
  return Math.max(
    axisBottom(view.axis) + margin - view.body.y,
    descriptionsHeight(kit, model.strata, view),
    callsHeight({ kit, model, ...input }, view),
  );
}

/** Gives findings and notes under the well the height that the last page has to spare. */
function settled(input: SheetInput, plan: Plan): Plan {
  const last = plan.views.at(-1)!;
  if (plan.rest !== 'band') return plan;
  const spare = Math.max(0, last.body.height - neededHeight(input, last) - 1);
  const kept = plan.remarksRoom;
  const room = kept + spare;
  const used = layRemarks(input, [], input.paper.frame.width, room)?.height;
  if (used === undefined) return plan;
  const body = { ...last.body, height: last.body.height + kept - used };
  return { ...plan, remarksRoom: room, views: [...plan.views.slice(0, -1), { ...last, body }] };
}

/** The rest stands beside the well where a sheet is wide; else under it, on its own page, or both. */
function restsFor(input: SheetInput): Rest[] {
  if (besideDrawing(input.paper)) return ['side'];
  return hasPanel(input) ? ['band', 'bandAndPage', 'ownPage'] : ['band', 'ownPage'];
}

/** The scale of the preferred series, and the pages, that show the well best. */
export function planSheet(input: SheetInput): Plan {
  const { paper, model } = input;
  const columns = layColumns(paper.frame.x, drawingWidth(input), hasRates(model.strata));
  const frame = {
    columns,
    heights: bodyHeights(input),
    extent: extentOf(model),
    widthScale: widthScaleOf(model, columns.section.width - 2),
    remarksRoom: remarksKept(input),
  };
  const rests = restsFor(input);
  const plans = depthScales.flatMap((scale) =>
    rests.flatMap((rest) => planFor(input, scale, rest, frame)),
  );
  const best = cheapest(input, plans);
  if (!best) throw new Error('no preferred scale holds this well');
  return settled(input, best);
}
