import type { Item, Page } from '../../items.ts';
import { drawMarkBoxes, marksHeight } from '../../parts/markBoxes.ts';
import { shortenedStrata } from '../../parts/descriptions.ts';
import { drawScaleBars } from '../../parts/scaleBars.ts';
import { drawTitleBlock, titleBlockHeight, type TitleFields } from '../../parts/titleBlock.ts';
import { solid } from '../../pens.ts';
import { group, line, rectangle } from '../../shapes.ts';
import { layBand, layPanel } from './blocks.ts';
import type { Plan } from './plan.ts';
import type { SheetInput } from './sheetInput.ts';
import { drawWell } from './wellView.ts';

/** The frame line of a page, after ISO 5457 (from memory). */
export function drawFrame({ paper }: SheetInput): Item {
  return group('frame', [rectangle(paper.frame, { stroke: solid('frame') })]);
}

function drawBand(input: SheetInput): Item[] {
  const { frame } = input.paper;
  const marksTop = frame.y + frame.height - titleBlockHeight - marksHeight;
  const band = layBand(input, frame.width);
  return [
    group('band', band.draw(frame.x, marksTop - band.height)),
    drawMarkBoxes(input.kit, input.record.marks ?? [], frame.x, marksTop, frame.width),
  ];
}

/** The right side of a lying A3: panel above, marks and title block below. */
function drawSide(input: SheetInput, plan: Plan): Item[] {
  const { frame } = input.paper;
  const x = frame.x + frame.width - 180;
  const marksTop = frame.y + frame.height - titleBlockHeight - marksHeight;
  const cut = plan.views.flatMap((view) => shortenedStrata(input.kit, input.model.strata, view));
  const panel = layPanel(input, cut, 180, marksTop - frame.y);
  return [
    line([x, frame.y], [x, frame.y + frame.height], solid('medium')),
    group('panel', panel.draw(x, frame.y)),
    drawMarkBoxes(input.kit, input.record.marks ?? [], x, marksTop, 180),
  ];
}

/** One page of the well itself. */
export function drawWellPage(
  input: SheetInput,
  plan: Plan,
  at: number,
  fields: TitleFields,
): Page {
  const { kit, paper } = input;
  const { frame } = paper;
  const view = plan.views[at]!;
  const foot = frame.y + frame.height;
  const bodyFoot = view.body.y + view.body.height;
  const side = plan.rest === 'side' ? drawSide(input, plan) : [];
  const band = plan.rest === 'band' && view.last ? drawBand(input) : [];
  return {
    width: paper.width,
    height: paper.height,
    items: [
      ...drawWell(input, view, at + 1),
      drawScaleBars(kit, plan.scale, view.widthScale, frame.x, bodyFoot),
      ...side,
      ...band,
      drawTitleBlock(kit, fields, frame.x + frame.width - 180, foot - titleBlockHeight),
      drawFrame(input),
    ],
  };
}
