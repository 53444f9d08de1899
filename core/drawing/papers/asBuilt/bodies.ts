import type { PaperMm } from '../../../base/units.ts';
import { headHeight } from '../../parts/columns.ts';
import { scaleBarsHeight } from '../../parts/scaleBars.ts';
import { hasRemarks, layBand, layRemarks } from './blocks.ts';
import { besideDrawing, marksTop, titleBlockPlace } from './foot.ts';
import type { SheetInput } from './sheetInput.ts';

/**
 * Where legend, quantities and particulars stand: all under the well, the first two under it and
 * the rest on a page of its own, all on a page of its own, or at the well's side (a lying A3).
 */
export type Rest = 'band' | 'bandAndPage' | 'ownPage' | 'side';

/** Kept free at least for findings and notes under the well when all stands on one page. */
const leastRemarks: PaperMm = 12;

/** Height kept under the well for findings and notes: at least a title and a line of each. */
export function remarksKept(input: SheetInput): PaperMm {
  const least = layRemarks(input, [], input.paper.frame.width, 0)?.height ?? 0;
  return hasRemarks(input) ? Math.max(leastRemarks, least) : least;
}

export type Heights = Readonly<Record<Rest, PaperMm>> & { readonly full: PaperMm };

/** Height of the drawing's body on its last page, by what stands under it; `full` on the others. */
export function bodyHeights(input: SheetInput): Heights {
  const { paper } = input;
  const { frame } = paper;
  const side = frame.height - headHeight - scaleBarsHeight;
  const title = titleBlockPlace(paper);
  const full = side - title.height;
  const marks = title.y - marksTop(paper);
  const band = layBand(input, frame.width, false).height + marks;
  const all = layBand(input, frame.width, true).height + marks;
  return {
    full: besideDrawing(paper) ? side : full,
    side,
    ownPage: full,
    bandAndPage: full - band,
    band: full - all - remarksKept(input),
  };
}
