import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item, Page } from '../../items.ts';
import { letter } from '../../letters.ts';
import { lineHeight, solid } from '../../pens.ts';
import { flowed, type Piece } from '../../parts/flow/flow.ts';
import { drawTitleBlock, titleBlockHeight, type TitleFields } from '../../parts/titleBlock.ts';
import { group, line } from '../../shapes.ts';
import type { Paper } from '../../paper.ts';
import { judgedByLine } from './blocks.ts';
import type { SheetInput } from './sheetInput.ts';
import { drawFrame } from './wellPage.ts';

const pad: PaperMm = 2;

/** Width of a column of these pages: an A3 has two, an A4 one. */
export function flowWidth({ name, frame }: Paper): PaperMm {
  return name === 'A3' ? frame.width / 2 - 2 * pad : frame.width - 2 * pad;
}

const practiceHeight = lineHeight('small') + 1;

/** Above the title block; beside it an A3 has a column down to the frame. */
function columnsOf(paper: Paper): Box[] {
  const { name, frame } = paper;
  const top = frame.y + pad;
  const foot = frame.y + frame.height;
  const upright = foot - titleBlockHeight - practiceHeight - pad;
  const width = flowWidth(paper);
  const right = { x: frame.x + frame.width - pad - width, y: top, width };
  const last = { ...right, height: upright - top };
  if (name === 'A4') return [last];
  return [{ x: frame.x + pad, y: top, width, height: foot - pad - top }, last];
}

/** By which practice the well is judged, in a line above the title block. */
function drawPractice(input: SheetInput): Item[] {
  const { kit, paper, judgement } = input;
  if (!judgement) return [];
  const { frame } = paper;
  const y = frame.y + frame.height - titleBlockHeight - 1.2;
  const x = frame.x + frame.width - 180 + pad;
  return letter(kit, judgedByLine(kit, judgement.practice), x, y, { widest: 180 - 2 * pad });
}

/** On an A3 a rule parts the two columns. */
function drawRule({ paper: { name, frame } }: SheetInput): Item[] {
  if (name === 'A4') return [];
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
  const { kit, paper } = input;
  const { frame } = paper;
  const top = frame.y + frame.height - titleBlockHeight;
  return {
    width: paper.width,
    height: paper.height,
    items: [
      group(name, items),
      group('practice', drawPractice(input)),
      ...drawRule(input),
      drawTitleBlock(kit, fields, frame.x + frame.width - 180, top),
      drawFrame(input),
    ],
  };
}
