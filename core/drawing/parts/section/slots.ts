import type { PaperMm } from '../../../base/units.ts';
import type { PieceModel } from '../../../model/wellModel.ts';
import type { Item } from '../../items.ts';
import { black, pens, white } from '../../pens.ts';
import { shownPart, yAt } from '../../scale.ts';
import { line } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { centreOf, halfOfPiece, sides } from './across.ts';

/** Distance of drawn slots: as the screen's own where that prints clean, else this. */
const cleanPitch: PaperMm = 1.3;

function pitchOf(view: View, piece: PieceModel): PaperMm {
  const trueMm = piece.slotSpacingMm ?? 0;
  return Math.max(trueMm / view.axis.scale, cleanPitch);
}

/**
 * Slots through both walls and a stub into the bore on alternate sides, so that screen is told
 * from plain pipe at a glance and in a photocopy. Drawn where the screen is; their number stands
 * for the screen, not for each slot.
 */
export function drawSlots(view: View, piece: PieceModel, filledWall: boolean): Item[] {
  const part = shownPart(view.axis, piece.topM, piece.bottomM);
  if (!part) return [];
  const half = halfOfPiece(view, piece);
  const wall = Math.max((piece.wallMm ?? 0) / (view.widthScale ?? 10), pens.wide);
  const pitch = pitchOf(view, piece);
  const top = yAt(view.axis, part.fromM);
  const foot = yAt(view.axis, part.toM);
  const count = Math.max(1, Math.floor((foot - top) / pitch - 0.3));
  const start = top + (foot - top - (count - 1) * pitch) / 2;
  const stub = Math.max((half - wall) * 0.35, 0.6);
  return Array.from({ length: count }, (_, at) => {
    const y = start + at * pitch;
    const inner = sides[at % 2]!;
    const across = sides.map((side) => {
      const outer = centreOf(view) + side * half;
      return line(
        [outer, y],
        [outer - side * wall, y],
        { ink: filledWall ? white : black, width: pens.medium },
        piece.path,
      );
    });
    const edge = centreOf(view) + inner * (half - wall);
    const mark = line(
      [edge, y],
      [edge - inner * stub, y],
      {
        ink: black,
        width: pens.narrow,
      },
      piece.path,
    );
    return [...across, mark];
  }).flat();
}
