import type { Item, Page } from '../../items.ts';
import { letter } from '../../letters.ts';
import type { TitleFields } from '../../parts/titleBlock.ts';
import { solid } from '../../pens.ts';
import { group, line } from '../../shapes.ts';
import { judgedByLine } from './blocks.ts';
import { pad } from './flowColumns.ts';
import { drawParts, type FlowPage } from './flowParts.ts';
import { besideDrawing, drawTitle, titleBlockPlace } from './foot.ts';
import type { SheetInput } from './sheetInput.ts';
import { drawFrame } from './wellPage.ts';

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

export function drawFlowPage(input: SheetInput, page: FlowPage, fields: TitleFields): Page {
  const { width, height } = input.paper;
  return {
    width,
    height,
    items: [
      ...drawParts(page),
      group('practice', drawPractice(input)),
      ...drawRule(input),
      drawTitle(input, fields.sheet, fields),
      drawFrame(input),
    ],
  };
}
