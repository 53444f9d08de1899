import type { PaperMm } from '../../../base/units.ts';
import type { Box } from '../../items.ts';
import { titleBlockHeight } from '../../parts/titleBlock.ts';
import type { Paper } from '../../paper.ts';
import { lineHeight } from '../../pens.ts';
import { besideDrawing, titleBlockPlace } from './foot.ts';

/** Free at the edges of the frame. */
export const pad: PaperMm = 2;

/** Width of a column of these pages: a wide sheet has two, others one. */
export function flowWidth(paper: Paper): PaperMm {
  const { width } = paper.frame;
  return (besideDrawing(paper) ? width / 2 : width) - 2 * pad;
}

const practiceHeight = lineHeight('small') + 1;

/** Height of the lowest column of these pages: what stands in one piece is no higher. */
export function flowHeight(paper: Paper): PaperMm {
  return flowColumns(paper).at(-1)!.height;
}

/** Above the title block; beside it a wide sheet has a column down to the frame. */
export function flowColumns(paper: Paper): Box[] {
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

/** Where details may begin on a page of the well: under it, or over the title block beside it. */
function besideWell(paper: Paper): Pick<Box, 'x' | 'width'> {
  return besideDrawing(paper) ? titleBlockPlace(paper) : paper.frame;
}

/** Width of details, which stand on pages of the well and on those that follow. */
export function detailsWidth(paper: Paper): PaperMm {
  return besideWell(paper).width - 2 * pad;
}

/** Room between two heights of a page of the well, for details. */
export function roomBetween(paper: Paper, top: PaperMm, foot: PaperMm): Box {
  const { x } = besideWell(paper);
  return { x: x + pad, y: top + pad, width: detailsWidth(paper), height: foot - top - pad };
}
