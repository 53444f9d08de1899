import type { PaperMm } from '../../base/units.ts';
import type { Box, Span } from '../items.ts';
import { axisBottom, type DepthAxis } from '../scale.ts';
import type { Columns } from './layColumns.ts';

/** The part of a well that one page shows, and where. */
export interface View {
  readonly axis: DepthAxis;
  /** A column that is not shown has no width. */
  readonly columns: Columns;
  /** Room for everything beside the axis; the axis lies within it. */
  readonly body: Box;
  /** Scale of diameters; absent where no diameter is known. */
  readonly widthScale?: number;
  readonly first: boolean;
  readonly last: boolean;
}

/** Between which heights words may stand: not beyond a match line. */
export function wordsRoom({ axis, body, first, last }: View): { top: PaperMm; foot: PaperMm } {
  return {
    top: first ? body.y + 0.3 : axis.top,
    foot: last ? body.y + body.height - 0.3 : axisBottom(axis),
  };
}

export function middleOf({ x, width }: Span): PaperMm {
  return x + width / 2;
}

export const headHeight = 9.5;
