import type { Centimetres } from './centimetres.ts';
import type { Counts, Piece } from './plainPipes.ts';
import { cutRange, takesUpCm, type PipeKind } from './stock.ts';

/** Screens one on the other: the slotted stretch that they make. */
export interface Stretch {
  /** From the bell below the lowest to the upper end of the highest. */
  readonly lengthCm: Centimetres;
  readonly openCm2: number;
  /** From the bottom up: the longest lowest, a cut one on top. */
  readonly pieces: readonly Piece[];
}

/** More choices of screens are not tried, so that screens all different in length end in time. */
const mostChoices = 2000;

function choicesOf(kinds: readonly PipeKind[]): Counts[] {
  let choices: number[][] = [[]];
  for (const { count } of kinds)
    choices = choices
      .flatMap((choice) => Array.from({ length: count + 1 }, (_, one) => [...choice, one]))
      .slice(0, mostChoices);
  return choices;
}

function wholePieces(kinds: readonly PipeKind[], counts: Counts): Piece[] {
  return kinds.flatMap((kind, at) => Array<Piece>(counts[at]!).fill({ kind }));
}

function wholeOf(kinds: readonly PipeKind[], counts: Counts): Stretch {
  const pieces = wholePieces(kinds, counts);
  return {
    pieces,
    lengthCm: pieces.reduce((sum, { kind }) => sum + takesUpCm(kind), 0),
    openCm2: pieces.reduce((sum, { kind }) => sum + takesUpCm(kind) * kind.openCm2PerCm, 0),
  };
}

/** By length, the stretch with the most open area; of those alike the one of fewest pieces. */
type ByLength = (Stretch | undefined)[];

function isBetter(openCm2: number, pieces: number, held: Stretch | undefined): boolean {
  if (!held || openCm2 !== held.openCm2) return !held || openCm2 > held.openCm2;
  return pieces < held.pieces.length;
}

/** Puts another screen on top of whole ones, cut to every length that it can be cut to. */
function holdCut(below: Stretch, kind: PipeKind, mostCm: Centimetres, best: ByLength) {
  const { fromCm, toCm } = cutRange(kind);
  for (let cutCm = fromCm; cutCm <= toCm; cutCm += 1) {
    const moreCm = cutCm - kind.insertionCm;
    const lengthCm = below.lengthCm + moreCm;
    if (lengthCm > mostCm) return;
    const openCm2 = below.openCm2 + moreCm * kind.openCm2PerCm;
    if (isBetter(openCm2, below.pieces.length + 1, best[lengthCm]))
      best[lengthCm] = { lengthCm, openCm2, pieces: [...below.pieces, { kind, cutCm }] };
  }
}

/**
 * The best stretch of each length up to `mostCm`, of whole screens and with one cut; the shorter
 * first.
 */
export function stretchesOf(
  kinds: readonly PipeKind[],
  mostCm: Centimetres,
): readonly [whole: Stretch[], cut: Stretch[]] {
  const whole: ByLength = [];
  const cut: ByLength = [];
  for (const counts of choicesOf(kinds)) {
    const stretch = wholeOf(kinds, counts);
    const { lengthCm, openCm2, pieces } = stretch;
    if (lengthCm > mostCm) continue;
    if (lengthCm > 0 && isBetter(openCm2, pieces.length, whole[lengthCm]))
      whole[lengthCm] = stretch;
    for (const [at, kind] of kinds.entries())
      if (counts[at]! < kind.count) holdCut(stretch, kind, mostCm, cut);
  }
  return [whole.flatMap((one) => one ?? []), cut.flatMap((one) => one ?? [])];
}
