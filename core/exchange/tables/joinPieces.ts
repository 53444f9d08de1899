import type { CasingString, Component } from '../../record/strings.ts';
import type { DepthM, Millimetres } from '../../base/units.ts';

/** A length of casing or screen as a table gives it, by its depths. */
export interface Piece {
  readonly from: DepthM;
  readonly to: DepthM;
  /** What the source calls the string that it belongs to. */
  readonly string?: string;
  readonly component: Component;
  /** Its outside diameter is one of which the source does not say the side. */
  readonly sideUnsaid?: boolean;
}

/** A string made of adjoining pieces, from the top down. */
export interface JoinedString {
  readonly name?: string;
  readonly pieces: readonly Piece[];
}

/** Two pieces of which the lower was left hanging: nothing is known between them. */
export interface Gap {
  readonly above: Piece;
  readonly below: Piece;
}

export interface Joined {
  readonly strings: readonly JoinedString[];
  readonly gaps: readonly Gap[];
}

/** Depths that differ by less are the same: no tape reads finer than a millimetre. */
const sameDepthM = 0.001;

/** Millimetres: less apart is the noise of sums in binary fractions. */
const sameSizeMm = 1e-6;

function isSameSize(a: Millimetres, b: Millimetres): boolean {
  return Math.abs(a - b) < sameSizeMm;
}

const bottomOf = ({ pieces }: JoinedString): DepthM => pieces.at(-1)!.to;
const topOf = ({ pieces }: JoinedString): DepthM => pieces[0]!.from;

/** The outside where it is given, else the inside: what tells pipes of one source apart. */
function sizeOf({ component: { outside, inside } }: Piece): Millimetres | undefined {
  return outside ?? inside;
}

/** Whether a piece has a diameter, outside or inside, as another table names it by. */
export function hasDiameter({ component }: Piece, mm: Millimetres): boolean {
  const { outside, inside, wall } = component;
  const around = inside === undefined || wall === undefined ? undefined : inside + 2 * wall;
  return [outside, inside, around].some((one) => one !== undefined && isSameSize(one, mm));
}

/** Unknown diameters count as the narrowest. */
function widest({ pieces }: JoinedString): Millimetres {
  return Math.max(...pieces.map((piece) => sizeOf(piece) ?? 0));
}

/** Pieces of strings that the source tells apart never join. */
function adjoins(string: JoinedString, piece: Piece): boolean {
  return string.name === piece.string && Math.abs(bottomOf(string) - piece.from) < sameDepthM;
}

/** Of several strings that end where the piece begins, one of its own diameter comes first. */
function stringAbove(strings: readonly JoinedString[], piece: Piece): number {
  const found = strings.findLastIndex(
    (one) => adjoins(one, piece) && sizeOf(one.pieces.at(-1)!) === sizeOf(piece),
  );
  return found < 0 ? strings.findLastIndex((one) => adjoins(one, piece)) : found;
}

/** A string that begins below the end of all others of its name has a gap above it. */
function gapsBetween(strings: readonly JoinedString[]): Gap[] {
  return strings.flatMap((below) => {
    const others = strings.filter((one) => one !== below && one.name === below.name);
    const above = others.filter((one) => topOf(one) < topOf(below));
    const lowest = above.sort((a, b) => bottomOf(b) - bottomOf(a))[0];
    if (!lowest || bottomOf(lowest) > topOf(below) - sameDepthM) return [];
    return [{ above: lowest.pieces.at(-1)!, below: below.pieces[0]! }];
  });
}

/**
 * Joins pieces whose ends meet into strings; one that overlaps another is a string of its own, as
 * in a telescoped well. Strings come in the order in which they were set: the shallowest first,
 * of equal ones the widest.
 */
export function joinPieces(pieces: readonly Piece[]): Joined {
  const strings: JoinedString[] = [];
  for (const piece of [...pieces].sort((a, b) => a.from - b.from || a.to - b.to)) {
    const at = stringAbove(strings, piece);
    if (at >= 0) strings[at] = { ...strings[at]!, pieces: [...strings[at]!.pieces, piece] };
    else
      strings.push({
        ...(piece.string === undefined ? {} : { name: piece.string }),
        pieces: [piece],
      });
  }
  strings.sort((a, b) => bottomOf(a) - bottomOf(b) || widest(b) - widest(a));
  return { strings, gaps: gapsBetween(strings) };
}

const sideRemark =
  'Diameters are taken as outside diameters; the source does not say of which side they are.';

/** The string as the record holds it: counted from the bottom, set by its lower end. */
export function recordString(joined: JoinedString): CasingString {
  return {
    ...(joined.name === undefined ? {} : { name: joined.name }),
    components: joined.pieces.map(({ component }) => component).toReversed(),
    set: { by: 'bottom', depth: bottomOf(joined) },
    ...(joined.pieces.some(({ sideUnsaid }) => sideUnsaid) ? { remark: sideRemark } : {}),
  };
}
