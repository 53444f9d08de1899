import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item, Page } from '../../items.ts';
import { again } from '../../kit.ts';
import { shortenedStrata } from '../../parts/descriptions.ts';
import { drawScaleBars } from '../../parts/scaleBars.ts';
import type { TitleFields } from '../../parts/titleBlock.ts';
import { solid } from '../../pens.ts';
import { group, line, rectangle } from '../../shapes.ts';
import type { Stratum } from '../../../model/wellModel.ts';
import type { Block } from '../../parts/block.ts';
import { layBand, layPanel, layRemarks, type Panel } from './blocks.ts';
import { pad, roomBetween } from './flowColumns.ts';
import { drawParts, type FlowPage } from './flowParts.ts';
import { drawMarks, drawTitle, marksPlace, marksTop } from './foot.ts';
import type { Plan } from './page.ts';
import type { SheetInput } from './sheetInput.ts';
import { pageAxis } from './pageAxis.ts';
import { drawWell } from './wellView.ts';

/** The frame line of a page, after ISO 5457 (from memory). */
export function drawFrame({ paper }: SheetInput): Item {
  return group('frame', [rectangle(paper.frame, { stroke: solid('frame') })]);
}

/** What stands under the well on its last page, from the marks upwards. */
function drawBand(input: SheetInput, plan: Plan): Item[] {
  const { frame } = input.paper;
  const band = layBand(input, frame.width, plan.rest === 'band');
  const top = marksTop(input.paper) - plan.spare - band.height;
  const remarks = plan.rest === 'band' ? remarksUnder(input, plan) : undefined;
  return [
    ...(remarks ? [group('remarks', remarks.draw(frame.x, top - remarks.height))] : []),
    group('band', band.draw(frame.x, top)),
    drawMarks(input),
  ];
}

/** Findings and notes, as much as the body leaves free and at least what was kept for them. */
function remarksUnder(input: SheetInput, plan: Plan): Block | undefined {
  return layRemarks(input, cutStrata(input, plan), input.paper.frame.width, plan.remarksRoom);
}

function cutStrata({ kit, model }: SheetInput, { views }: Plan): Stratum[] {
  return views.flatMap((view) => shortenedStrata(kit, model.strata, view));
}

/** The panel beside a drawing, over marks and title block: the same on every page of the well. */
export function layPanelBeside(input: SheetInput, plan: Plan): Panel {
  const { y, width } = marksPlace(input.paper);
  return layPanel(input, cutStrata(input, plan), width, y - input.paper.frame.y);
}

/** What a panel at the top of a page leaves free over the marks. */
export function spareUnder({ paper }: SheetInput, panel: Block): PaperMm {
  return marksTop(paper) - paper.frame.y - panel.height;
}

/** What stands beside a drawing: panel above, marks and title block below. */
function drawSide(input: SheetInput, panel: Block): Item[] {
  const { frame } = input.paper;
  const { x } = marksPlace(input.paper);
  return [
    line([x, frame.y], [x, frame.y + frame.height], solid('medium')),
    group('panel', panel.draw(x, frame.y)),
    drawMarks(input),
  ];
}

/** Free room over the marks of a page of the well. */
export function spareRoom({ paper }: SheetInput, height: PaperMm): Box {
  const foot = marksTop(paper);
  return roomBetween(paper, foot - height, foot);
}

/** What stands in the free room over the marks, under a line. */
export function drawSpare(input: SheetInput, height: PaperMm, details: FlowPage): Item[] {
  if (details.parts.length === 0) return [];
  const room = spareRoom(input, height);
  const y = room.y - pad;
  const [from, to] = [room.x - pad, room.x + room.width + pad];
  return [line([from, y], [to, y], solid('medium')), ...drawParts(details)];
}

/** What stands on a page of the well besides the well. */
interface WithWell {
  /** The panel at its side, on a sheet that is wide. */
  readonly side: Block | undefined;
  /** What begins in the room that the last page leaves free. */
  readonly details: FlowPage | undefined;
}

/** One page of the well itself. */
export function drawWellPage(
  input: SheetInput,
  plan: Plan,
  at: number,
  fields: TitleFields,
  { side, details }: WithWell,
): Page {
  const { kit, paper } = input;
  const { frame } = paper;
  const view = plan.views[at]!;
  const bodyFoot = view.body.y + view.body.height;
  const banded = plan.rest === 'band' || plan.rest === 'bandAndPage';
  const band = banded && view.last ? drawBand(input, plan) : [];
  const free = side ? spareUnder(input, side) : plan.spare;
  const spare = view.last && details ? drawSpare(input, free, details) : [];
  return {
    width: paper.width,
    height: paper.height,
    items: [
      ...drawWell(input, view, at + 1),
      again(kit, `bars on ${at}`, drawScaleBars, plan.scale, view.widthScale, frame.x, bodyFoot),
      ...(side ? drawSide(input, side) : []),
      ...band,
      ...spare,
      drawTitle(input, String(at), fields),
      drawFrame(input),
    ],
    axes: [pageAxis(view)],
  };
}
