import type { CasingString } from '../../record/strings.ts';
import { joinPieces, recordString, type JoinedString, type Piece } from '../tables/joinPieces.ts';

/** Pieces that were named after one string stand together, in the order of first sight. */
function byName(pieces: readonly Piece[]): readonly Piece[][] {
  const groups = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const name = piece.string!;
    groups.set(name, [...(groups.get(name) ?? []), piece]);
  }
  return [...groups.values()];
}

/**
 * Strings of pieces that were given by their depths. Where every piece names its string, the
 * strings stand in the order in which they are first named; where not, pieces whose ends meet make
 * one, the shallowest first (see joinPieces.ts).
 */
export function joinedStrings(pieces: readonly Piece[]): readonly JoinedString[] {
  const named = pieces.length > 0 && pieces.every(({ string }) => string !== undefined);
  const groups = named ? byName(pieces) : [pieces];
  return groups.flatMap((group) => joinPieces(group).strings);
}

/** The same as the record holds them. */
export function stringsFrom(pieces: readonly Piece[]): CasingString[] {
  return joinedStrings(pieces).map(recordString);
}
