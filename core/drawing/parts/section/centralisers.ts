import type { BoreModel, PieceModel, StringModel } from '../../../model/wellModel.ts';
import type { Item } from '../../items.ts';
import { solid, white } from '../../pens.ts';
import { paperLength, shows, yAt } from '../../scale.ts';
import { group, polygon } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { edgeAt, sides } from './across.ts';

/** What the centraliser leans on: the hole's wall or the inside of an outer string. */
function wallAround(
  depthM: number,
  piece: PieceModel,
  bore: BoreModel,
  outer: readonly StringModel[],
): number | undefined {
  const own = piece.outsideMm ?? 0;
  const insides = outer
    .flatMap(({ pieces }) => pieces)
    .filter(({ topM, bottomM }) => topM <= depthM && depthM <= bottomM)
    .map(({ insideMm }) => insideMm ?? Infinity);
  const hole = bore.sections.find(({ fromM, toM }) => fromM <= depthM && depthM <= toM);
  const walls = [...insides, hole?.diameterMm ?? Infinity].filter((one) => one > own);
  const nearest = Math.min(...walls);
  return Number.isFinite(nearest) ? nearest : undefined;
}

/**
 * A bow half a metre up and down where the scale has room for that, and no taller than 3.2 mm;
 * white within, so that it shows in a dense fill.
 */
function drawBow(view: View, depthM: number, piece: PieceModel, aroundMm: number): Item[] {
  const outside = piece.outsideMm;
  if (outside === undefined) return [];
  const y = yAt(view.axis, depthM);
  const reach = Math.min(1.6, paperLength(0.5, view.axis.scale));
  return sides.map((side) =>
    polygon(
      [
        [edgeAt(view, side, outside), y - reach],
        [edgeAt(view, side, aroundMm) - side * 0.25, y - reach / 4],
        [edgeAt(view, side, aroundMm) - side * 0.25, y + reach / 4],
        [edgeAt(view, side, outside), y + reach],
      ],
      { fill: white, stroke: { ...solid('narrow'), join: 'round' }, source: piece.path },
    ),
  );
}

/** Centralisers as bows from the casing to the wall, both sides. */
export function drawCentralisers(
  string: StringModel,
  strings: readonly StringModel[],
  bore: BoreModel,
  view: View,
): Item {
  const outer = strings.filter((one) => one !== string);
  const items = string.pieces.flatMap((piece) =>
    piece.centralisersM
      .filter((depthM) => shows(view.axis, depthM, view.first))
      .flatMap((depthM) => {
        const around = wallAround(depthM, piece, bore, outer);
        return around === undefined ? [] : drawBow(view, depthM, piece, around);
      }),
  );
  return group('centralisers', items);
}
