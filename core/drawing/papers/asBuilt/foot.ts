import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item } from '../../items.ts';
import { again } from '../../kit.ts';
import type { Paper } from '../../paper.ts';
import { drawMarkBoxes, marksHeight } from '../../parts/markBoxes.ts';
import { drawTitleBlock, titleBlockHeight, type TitleFields } from '../../parts/titleBlock.ts';
import type { SheetInput } from './sheetInput.ts';

/** As wide as an upright A4's frame (ISO 7200, from memory). */
export const titleBlockWidth: PaperMm = 180;

/** A drawing narrower than this has no room for its words. */
const leastDrawing: PaperMm = 180;
/** Four boxes for marks, two by two, need as much. */
const leastMarks: PaperMm = 70;

/** What the title block leaves of a frame's width. */
function leftOf({ frame }: Paper): PaperMm {
  return frame.width - titleBlockWidth;
}

/** Whether what belongs to a drawing stands at its side, over the title block, and not under it. */
export function besideDrawing(paper: Paper): boolean {
  return leftOf(paper) >= leastDrawing;
}

/** Width of the drawing: all of a frame, or what the title block leaves of a wide one. */
export function drawingWidth(paper: Paper): PaperMm {
  return besideDrawing(paper) ? leftOf(paper) : paper.frame.width;
}

/** The title block stands in the lower right corner (ISO 7200, from memory). */
export function titleBlockPlace({ frame }: Paper): Box {
  return {
    x: frame.x + frame.width - titleBlockWidth,
    y: frame.y + frame.height - titleBlockHeight,
    width: titleBlockWidth,
    height: titleBlockHeight,
  };
}

/** Marks stand over the title block, or left of it where a corner is free. */
export function marksPlace(paper: Paper): Box {
  const title = titleBlockPlace(paper);
  if (besideDrawing(paper) || leftOf(paper) < leastMarks)
    return { ...title, y: title.y - marksHeight, height: marksHeight };
  return { ...title, x: paper.frame.x, width: leftOf(paper) };
}

/** Where what stands over marks and title block ends. */
export function marksTop(paper: Paper): PaperMm {
  return marksPlace(paper).y;
}

export function drawMarks({ kit, record, images = {}, paper }: SheetInput): Item {
  return drawMarkBoxes(kit, record.marks ?? [], images, marksPlace(paper));
}

/** The title block of a page; `page` tells pages of one sheet apart. */
export function drawTitle({ kit, paper }: SheetInput, page: string, fields: TitleFields): Item {
  const { x, y } = titleBlockPlace(paper);
  return again(kit, `title on ${page}`, drawTitleBlock, fields, x, y);
}
