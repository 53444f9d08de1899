import type { PaperMm } from '../../base/units.ts';
import type { Box, Span } from '../items.ts';
import { letterings } from '../pens.ts';
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

/** Half a small figure with its air, and what it keeps from a match line. */
const figureReach: PaperMm = letterings.small * 0.8;
const offMatchLine: PaperMm = 1.7;

/** Heights between which the middle of a small figure stands within the body, off match lines. */
export function figureRoom({ body, axis, first, last }: View): { top: PaperMm; foot: PaperMm } {
  const [top, foot] = [body.y + figureReach, body.y + body.height - figureReach];
  return {
    top: first ? top : Math.max(top, axis.top + offMatchLine),
    foot: last ? foot : Math.min(foot, axisBottom(axis) - offMatchLine),
  };
}

export function middleOf({ x, width }: Span): PaperMm {
  return x + width / 2;
}

export const headHeight = 9.5;
