import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item, Page } from '../../items.ts';
import { letter } from '../../letters.ts';
import { lineHeight, solid } from '../../pens.ts';
import { flowed, type Piece } from '../../parts/flow/flow.ts';
import { titleBlockHeight, type TitleFields } from '../../parts/titleBlock.ts';
import { group, line } from '../../shapes.ts';
import type { Paper } from '../../paper.ts';
import { judgedByLine } from './blocks.ts';
import { besideDrawing, drawTitle, titleBlockPlace } from './foot.ts';
import type { SheetInput } from './sheetInput.ts';
import { drawFrame } from './wellPage.ts';

const pad: PaperMm = 2;

/** Width of a column of these pages: a wide sheet has two, others one. */
export function flowWidth(paper: Paper): PaperMm {
  const { width } = paper.frame;
  return (besideDrawing(paper) ? width / 2 : width) - 2 * pad;
}

const practiceHeight = lineHeight('small') + 1;

/** Height of the lowest column of these pages: what stands in one piece is no higher. */
export function flowHeight(paper: Paper): PaperMm {
  return columnsOf(paper).at(-1)!.height;
}

/** Above the title block; beside it a wide sheet has a column down to the frame. */
function columnsOf(paper: Paper): Box[] {
  const { frame } = paper;
  const top = frame.y + pad;
  const foot = frame.y + frame.height;
  const upright = foot - titleBlockHeight - practiceHeight - pad;
  const width = flowWidth(paper);
  const right = { x: frame.x + frame.width - pad - width, y: top, width };
  const last = { ...right, height: upright - top };
  if (!besideDrawing(paper)) return [last];
  return [{ x: frame.x + pad, y: top, width, height: foot - pad - top }, last];
}

/** By which practice the well is judged, in a line above the title block. */
function drawPractice(input: SheetInput): Item[] {
  const { kit, paper, judgement } = input;
  if (!judgement) return [];
  const { x, y, width } = titleBlockPlace(paper);
  const widest = width - 2 * pad;
  return letter(kit, judgedByLine(kit, judgement.practice), x + pad, y - 1.2, { widest });
}

/** On a wide sheet a rule parts the two columns. */
function drawRule({ paper }: SheetInput): Item[] {
  if (!besideDrawing(paper)) return [];
  const { frame } = paper;
  const x = frame.x + frame.width / 2;
  return [line([x, frame.y], [x, frame.y + frame.height], solid('medium'))];
}

/** Items of as many pages as it takes; none without pieces. */
export function flowPages(paper: Paper, pieces: readonly Piece[]): Item[][] {
  return pieces.length === 0 ? [] : flowed(pieces, columnsOf(paper));
}

export function drawFlowPage(
  input: SheetInput,
  name: string,
  items: readonly Item[],
  fields: TitleFields,
): Page {
  const { width, height } = input.paper;
  return {
    width,
    height,
    items: [
      group(name, items),
      group('practice', drawPractice(input)),
      ...drawRule(input),
      drawTitle(input, name, fields),
      drawFrame(input),
    ],
  };
}
