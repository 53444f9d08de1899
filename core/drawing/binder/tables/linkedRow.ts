import type { PaperMm } from '../../../base/units.ts';
import type { Piece } from '../../parts/flow/part.ts';

/** A row that leads to a page of the binder. */
export function linkedRow(piece: Piece, width: PaperMm, page: number): Piece {
  return {
    ...piece,
    draw: (x, y) => [
      ...piece.draw(x, y),
      { kind: 'link', box: { x, y, width, height: piece.height }, to: { page } },
    ],
  };
}
