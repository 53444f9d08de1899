import type { Centimetres } from './centimetres.ts';
import type { Limits } from './limits.ts';
import { lessCounts, type Counts, type Piece, type PlainPipes } from './plainPipes.ts';
import { cutRange, type PipeKind } from './stock.ts';

/** Plain pipe under the lowest slots. Whole pipes make one length; a single cut one makes many. */
export interface Sump {
  readonly fromCm: Centimetres;
  readonly toCm: Centimetres;
  readonly cuts: 0 | 1;
  /** Plain pipes that are left for the rest. */
  readonly left: Counts;
  readonly pieces: readonly PipeKind[];
}

/** More ways to make a sump are not tried; they take the fewest pipes, then the longest. */
const mostSumps = 12;

function wholeSumps(plains: PlainPipes, { sumpMostCm }: Limits): Sump[] {
  return plains.choices(plains.all, sumpMostCm).flatMap(({ counts, cm }) => {
    const pieces = plains.kinds.flatMap((kind, at) => Array<PipeKind>(counts[at]!).fill(kind));
    const [lowest] = pieces;
    const lengthCm = cm + (lowest?.insertionCm ?? 0);
    if (!lowest || lengthCm > sumpMostCm) return [];
    const left = lessCounts(plains.all, counts);
    return [{ fromCm: lengthCm, toCm: lengthCm, cuts: 0, left, pieces } as const];
  });
}

function cutSumps(plains: PlainPipes, { sumpMostCm }: Limits): Sump[] {
  return plains.kinds.flatMap((kind, at) => {
    const { fromCm, toCm } = cutRange(kind);
    const mostCm = Math.min(toCm, sumpMostCm);
    if (kind.count === 0 || fromCm > mostCm) return [];
    const left = plains.all.map((count, one) => (one === at ? count - 1 : count));
    return [{ fromCm, toCm: mostCm, cuts: 1, left, pieces: [kind] } as const];
  });
}

/** Every sump that the pipes on site make within the most that the practice allows. */
export function sumpsOf(plains: PlainPipes, limits: Limits): Sump[] {
  const whole = wholeSumps(plains, limits)
    .sort((a, b) => a.pieces.length - b.pieces.length || b.toCm - a.toCm)
    .slice(0, mostSumps);
  return [...whole, ...cutSumps(plains, limits)];
}

/**
 * The length that a sump comes to, the longest it can: no longer than `roomCm`, from the lowest
 * slots to the hole's foot, and no shorter than the practice asks for.
 */
export function sumpLength(
  { fromCm, toCm }: Sump,
  { sumpLeastCm }: Limits,
  roomCm: Centimetres,
): Centimetres | undefined {
  const mostCm = Math.min(toCm, roomCm);
  return mostCm >= Math.max(fromCm, sumpLeastCm) ? mostCm : undefined;
}

/** The pieces of a sump of a length, from the bottom up. */
export function sumpPieces({ pieces, cuts }: Sump, lengthCm: Centimetres): Piece[] {
  return pieces.map((kind) => (cuts === 1 ? { kind, cutCm: lengthCm } : { kind }));
}
