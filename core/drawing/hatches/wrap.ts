import type { PaperMm } from '../../base/units.ts';
import type { HatchTile, PathItem } from '../items.ts';
import type { Point } from '../shapes.ts';
import { moved } from './marks.ts';

/** Where a mark reaches, with half its line's width. */
export interface Reach {
  readonly left: PaperMm;
  readonly right: PaperMm;
  readonly top: PaperMm;
  readonly bottom: PaperMm;
}

/** Curves are counted by their handles, which never reach less far than the curve. */
export function reachOf(mark: PathItem): Reach {
  const figures = mark.segments.flatMap(([, ...rest]) => rest as number[]);
  const xs = figures.filter((_, at) => at % 2 === 0);
  const ys = figures.filter((_, at) => at % 2 === 1);
  const pen = (mark.stroke?.width ?? 0) / 2;
  return {
    left: Math.min(...xs) - pen,
    right: Math.max(...xs) + pen,
    top: Math.min(...ys) - pen,
    bottom: Math.max(...ys) + pen,
  };
}

/**
 * How far a mark is to be shifted along one side to stand wherever it crosses an edge. A mark that
 * goes from edge to edge joins its own repetition and needs no shift.
 */
function shifts(from: PaperMm, to: PaperMm, side: PaperMm): PaperMm[] {
  if (from <= 0 && to >= side) return [0];
  return [0, ...(from < 0 ? [side] : []), ...(to > side ? [-side] : [])];
}

/** A mark and its repetitions at the opposite edges, where it crosses edges of the tile. */
function repeated(mark: PathItem, width: PaperMm, height: PaperMm): PathItem[] {
  const { left, right, top, bottom } = reachOf(mark);
  return shifts(left, right, width).flatMap((dx) =>
    shifts(top, bottom, height).map((dy) => moved(mark, [dx, dy] satisfies Point)),
  );
}

/** A tile whose marks go on across its edges: each that crosses one stands at the other too. */
export function wrap(width: PaperMm, height: PaperMm, marks: readonly PathItem[]): HatchTile {
  return { width, height, marks: marks.flatMap((mark) => repeated(mark, width, height)) };
}
