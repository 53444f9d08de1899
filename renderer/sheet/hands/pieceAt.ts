import type { RecordPath } from '../../../core/base/recordPath.ts';
import type { PaperMm } from '../../../core/base/units.ts';
import type { PageAxis } from '../../../core/drawing/items.ts';
import type { PieceModel, WellModel } from '../../../core/model/wellModel.ts';
import { depthOf } from '../../../core/drawing/scale.ts';
import { isOn } from './place.ts';

function widthOf({ outsideMm, insideMm }: PieceModel): number {
  return outsideMm ?? insideMm ?? 0;
}

/**
 * The pipe that a point of the page (millimetres) lies within, the innermost where strings stand
 * in each other. Pipes are drawn as their walls, and pointed at anywhere between them.
 */
export function pieceAt(
  { strings }: WellModel,
  axes: readonly PageAxis[],
  { x, y }: { readonly x: PaperMm; readonly y: PaperMm },
): RecordPath | undefined {
  for (const axis of axes) {
    const { x: left, width } = axis.spans.section;
    const [depthM, offMm] = [depthOf(axis, y), Math.abs(x - left - width / 2)];
    const there = strings
      .flatMap(({ pieces }) => pieces)
      .filter((piece) => piece.topM <= depthM && depthM <= piece.bottomM)
      .filter((piece) => offMm <= (widthOf(piece) / 2) * (axis.mmPerMm ?? 0))
      .sort((a, b) => widthOf(a) - widthOf(b));
    if (there[0] && isOn(axis, depthM)) return there[0].path;
  }
  return undefined;
}
