import type { Millimetres, PaperMm } from '../../../base/units.ts';
import type { PieceModel } from '../../../model/wellModel.ts';
import { middleOf, type View } from '../columns.ts';

/** The two sides of the well's centre line. */
export const sides = [-1, 1] as const;
export type Side = (typeof sides)[number];

export function centreOf(view: View): PaperMm {
  return middleOf(view.columns.section);
}

/** The farthest that anything may stand from the centre line. */
function mostHalf(view: View): PaperMm {
  return view.columns.section.width / 2 - 1;
}

function trueHalf(view: View, diameterMm: Millimetres): PaperMm {
  return diameterMm / 2 / (view.widthScale ?? 10);
}

/** Whether a diameter is too wide for the column and is drawn cut, with a break line. */
export function isCut(view: View, diameterMm: Millimetres): boolean {
  return trueHalf(view, diameterMm) > mostHalf(view) + 1e-9;
}

/** Half a diameter on paper, at the sheet's scale of diameters; cut at the column's edge. */
export function halfOf(view: View, diameterMm: Millimetres): PaperMm {
  return Math.min(trueHalf(view, diameterMm), mostHalf(view));
}

/** Half the width that stands for a hole or pipe whose diameter nobody recorded. */
export function unknownHalf(view: View): PaperMm {
  return view.columns.section.width / 4;
}

/** The width at which a piece is drawn: where only its inside is known, that of its inner walls. */
export function drawnMm({ outsideMm, insideMm }: PieceModel): Millimetres | undefined {
  return outsideMm ?? insideMm;
}

/** Half a piece's width on paper, also where nothing of it is known. */
export function halfOfPiece(view: View, piece: PieceModel): PaperMm {
  const mm = drawnMm(piece);
  return mm === undefined ? unknownHalf(view) * 0.7 : halfOf(view, mm);
}

/** Where a diameter's edge stands on one side of the centre line. */
export function edgeAt(view: View, side: Side, diameterMm: Millimetres): PaperMm {
  return centreOf(view) + side * halfOf(view, diameterMm);
}
