import type { Metres } from '../../../base/units.ts';
import type { PieceModel, StringModel } from '../../../model/wellModel.ts';
import { roundDepth } from '../../../model/range.ts';
import type { SitePipe } from '../../../record/layingOut.ts';

/** Lengths nearer than this are one: no saw and no tape on a site is truer. */
const sameM: Metres = 0.005;

const lengthOf = ({ topM, bottomM }: PieceModel): Metres => roundDepth(bottomM - topM);

const pipeKinds: readonly PieceModel['kind'][] = ['plain', 'screen', 'sump'];

/** Lengths on site that a piece may have been cut from. */
function siteLengths(piece: PieceModel, pipes: readonly SitePipe[]): Metres[] {
  const kind = piece.kind === 'screen' ? 'screen' : 'plain';
  return pipes.flatMap(({ kind: of, length, outside }) => {
    const otherSize = outside !== undefined && piece.outsideMm !== undefined;
    if (of !== kind || (otherSize && outside !== piece.outsideMm)) return [];
    return length ?? [];
  });
}

/** The length that at least half of the pieces of a kind share; none where there is no such. */
function usualLength(piece: PieceModel, { pieces }: StringModel): Metres | undefined {
  const lengths = pieces.filter(({ kind }) => kind === piece.kind).map(lengthOf);
  const shared = (one: Metres) => lengths.filter((other) => Math.abs(other - one) < sameM).length;
  return lengths.find((one) => shared(one) > 1 && shared(one) * 2 >= lengths.length);
}

/**
 * Whether a pipe must be cut before it goes in: no pipe of its kind on site has its length and a
 * longer one is there. Where no pipes on site are written, a pipe shorter than the length that
 * most of its kind share is held to be cut; a sump may have come short, so nothing is said of it.
 */
export function isCut(
  piece: PieceModel,
  string: StringModel,
  pipes: readonly SitePipe[] = [],
): boolean {
  if (!pipeKinds.includes(piece.kind)) return false;
  const length = lengthOf(piece);
  const onSite = siteLengths(piece, pipes);
  if (onSite.length > 0)
    return (
      onSite.every((one) => Math.abs(one - length) >= sameM) && onSite.some((one) => one > length)
    );
  const usual = piece.kind === 'sump' ? undefined : usualLength(piece, string);
  return usual !== undefined && length < usual - sameM;
}
