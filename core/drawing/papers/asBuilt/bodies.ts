import type { PaperMm } from '../../../base/units.ts';
import { headHeight } from '../../parts/columns.ts';
import { marksHeight } from '../../parts/markBoxes.ts';
import { scaleBarsHeight } from '../../parts/scaleBars.ts';
import { titleBlockHeight } from '../../parts/titleBlock.ts';
import { hasRemarks, layBand, layRemarks } from './blocks.ts';
import type { SheetInput } from './sheetInput.ts';

/**
 * Where legend, quantities and particulars stand: all under the well, the first two under it and
 * the rest on a page of its own, all on a page of its own, or at the side of a lying A3.
 */
export type Rest = 'band' | 'bandAndPage' | 'ownPage' | 'side';

/** Kept free at least for findings and notes under the well when all stands on one page. */
const leastRemarks: PaperMm = 12;

/** Height kept under the well for findings and notes: at least a title and a line of each. */
export function remarksKept(input: SheetInput): PaperMm {
  const least = layRemarks(input, [], input.paper.frame.width, 0)?.height ?? 0;
  return hasRemarks(input) ? Math.max(leastRemarks, least) : least;
}

/** Width of the drawing: all of an A4, what the title block leaves of an A3. */
export function drawingWidth({ paper }: SheetInput): PaperMm {
  return paper.name === 'A3' ? paper.frame.width - 180 : paper.frame.width;
}

export type Heights = Readonly<Record<Rest, PaperMm>> & { readonly full: PaperMm };

/** Height of the drawing's body on its last page, by what stands under it; `full` on the others. */
export function bodyHeights(input: SheetInput): Heights {
  const { frame, name } = input.paper;
  const side = frame.height - headHeight - scaleBarsHeight;
  const full = side - titleBlockHeight;
  const band = layBand(input, frame.width, false).height + marksHeight;
  const all = layBand(input, frame.width, true).height + marksHeight;
  return {
    full: name === 'A3' ? side : full,
    side,
    ownPage: full,
    bandAndPage: full - band,
    band: full - all - remarksKept(input),
  };
}
