import type { DepthM, PaperMm } from '../../../base/units.ts';
import { depthScales, paperLength, widthScaleFor } from '../../scale.ts';
import { headHeight, layColumns, type Columns, type View } from '../../parts/columns.ts';
import { descriptionsFit } from '../../parts/descriptions.ts';
import { hasRates } from '../../parts/rate.ts';
import { scaleBarsHeight } from '../../parts/scaleBars.ts';
import { marksHeight } from '../../parts/markBoxes.ts';
import { titleBlockHeight } from '../../parts/titleBlock.ts';
import { callsFit } from './wellView.ts';
import { layBand } from './blocks.ts';
import { extentOf, widestOf } from './extent.ts';
import type { SheetInput } from './sheetInput.ts';

/** How a well is cut into pages and at which scale. */
export interface Plan {
  readonly scale: number;
  readonly views: readonly View[];
  /** Where legend, quantities and particulars stand. */
  readonly rest: 'band' | 'side' | 'ownPage';
}

/** Width of the drawing: all of an A4, what the title block leaves of an A3. */
export function drawingWidth({ paper }: SheetInput): PaperMm {
  return paper.name === 'A3' ? paper.frame.width - 180 : paper.frame.width;
}

const margin: PaperMm = 2;
const mostPages = 8;
/** A layer or fill thinner than this on paper can hardly be read. */
const legibleMm: PaperMm = 2;

/** Height of the drawing's body with and without the band under it. */
function bodyHeights(input: SheetInput): { full: PaperMm; withBand: PaperMm } {
  const { frame, name } = input.paper;
  const full = frame.height - headHeight - scaleBarsHeight - (name === 'A4' ? titleBlockHeight : 0);
  const band = name === 'A4' ? layBand(input, frame.width).height + marksHeight : 0;
  return { full, withBand: full - band };
}

/** Cuts a length into pages; cuts stand on round depths. Undefined when it takes too many. */
function cut(
  fromM: DepthM,
  toM: DepthM,
  fullM: number,
  lastM: number,
): { fromM: DepthM; toM: DepthM }[] | undefined {
  const length = toM - fromM;
  if (lastM <= 0 && length > 0) return undefined;
  const pages = length <= lastM ? 1 : 1 + Math.ceil((length - lastM) / fullM);
  if (pages > mostPages) return undefined;
  const ranges: { fromM: DepthM; toM: DepthM }[] = [];
  const step = fullM >= 40 ? 5 : 1;
  let at = fromM;
  for (let page = 0; page < pages - 1; page += 1) {
    const share = (toM - at) * (fullM / (fullM * (pages - 1 - page) + lastM));
    const wanted = Math.floor((at + Math.min(fullM, share)) / step) * step;
    const least = toM - lastM - (pages - 2 - page) * fullM;
    const end = Math.min(Math.max(wanted, Math.ceil(least / step) * step), at + fullM);
    ranges.push({ fromM: at, toM: end });
    at = end;
  }
  return [...ranges, { fromM: at, toM }];
}

function viewsFor(
  input: SheetInput,
  scale: number,
  rest: Plan['rest'],
  columns: Columns,
): View[] | undefined {
  const { fromM, toM } = extentOf(input.model);
  const heights = bodyHeights(input);
  const lastHeight = rest === 'band' ? heights.withBand : heights.full;
  const metresIn = (height: PaperMm) => ((height - 2 * margin) * scale) / 1000;
  const ranges = cut(fromM, toM, metresIn(heights.full), metresIn(lastHeight));
  const widest = widestOf(input.model);
  const widthScale =
    widest === undefined ? undefined : widthScaleFor(widest, columns.section.width - 5);
  const { x, y } = input.paper.frame;
  return ranges?.map((range, at) => {
    const last = at === ranges.length - 1;
    const height = last ? lastHeight : heights.full;
    const body = { x, y: y + headHeight, width: drawingWidth(input), height };
    return {
      axis: { ...range, scale, top: body.y + margin },
      columns,
      body,
      ...(widthScale !== undefined && { widthScale }),
      first: at === 0,
      last,
    };
  });
}

/** Share of layers and fills that are too thin on paper to be read. */
function illegible({ model }: SheetInput, scale: number): number {
  const parts = [...model.strata, ...model.annulus].map(({ fromM, toM }) => toM - fromM);
  if (parts.length === 0) return 0;
  return parts.filter((metres) => paperLength(metres, scale) < legibleMm).length / parts.length;
}

/** Lower is better: pages first, then what cannot be read or stand in full, then empty paper. */
function costOf(input: SheetInput, plan: Plan): number {
  const { kit, model } = input;
  const pages = plan.views.length + (plan.rest === 'ownPage' ? 1 : 0);
  const drawn = plan.views.reduce((sum, { axis }) => sum + paperLength(axis.toM - axis.fromM, axis.scale), 0);
  const room = plan.views.reduce((sum, { body }) => sum + body.height, 0);
  const crowded = plan.views.some(
    (view) => !descriptionsFit(kit, model.strata, view) || !callsFit(input, view),
  );
  return (
    pages * 10 +
    (crowded ? 35 : 0) +
    (illegible(input, plan.scale) > 0.25 ? 25 : 0) +
    Math.max(0, 0.5 - drawn / room) * 45 +
    Math.max(0, 1 - drawn / room) * 2
  );
}

/** The scale of the preferred series, and the pages, that show the well best. */
export function planSheet(input: SheetInput): Plan {
  const columns = layColumns(
    input.paper.frame.x,
    drawingWidth(input),
    hasRates(input.model.strata),
  );
  const rests: Plan['rest'][] = input.paper.name === 'A3' ? ['side'] : ['band', 'ownPage'];
  const plans = depthScales.flatMap((scale) =>
    rests.flatMap((rest): Plan[] => {
      const views = viewsFor(input, scale, rest, columns);
      return views ? [{ scale, views, rest }] : [];
    }),
  );
  const best = plans
    .map((plan) => ({ plan, cost: costOf(input, plan) }))
    .sort((a, b) => a.cost - b.cost)[0];
  if (!best) throw new Error('no preferred scale holds this well');
  return best.plan;
}
