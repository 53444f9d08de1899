import type { Centimetres } from './centimetres.ts';
import { cutRange, takesUpCm, type PipeKind } from './stock.ts';

/** How many of each kind. */
export type Counts = readonly number[];

/** A pipe in the string: its kind, and what it is cut to where it doesn't go in whole. */
export interface Piece {
  readonly kind: PipeKind;
  readonly cutCm?: Centimetres;
}

/** Which lengths some pipes make, one on the other. */
interface Sums {
  /** Kind that a length was first reached with; -1 where none reaches it. */
  readonly by: Int16Array;
  /** How many of that kind stand in it. */
  readonly used: Int16Array;
  /** How many lengths below this one are reached. */
  readonly below: Int32Array;
}

function sumsOf(kinds: readonly PipeKind[], counts: Counts, mostCm: Centimetres): Sums {
  const by = new Int16Array(mostCm + 1).fill(-1);
  const used = new Int16Array(mostCm + 1);
  by[0] = kinds.length;
  for (const [at, kind] of kinds.entries()) {
    const stepCm = takesUpCm(kind);
    const count = counts[at] ?? 0;
    for (let cm = stepCm; cm <= mostCm; cm += 1) {
      if (by[cm] !== -1) continue;
      const beforeCm = cm - stepCm;
      const before = by[beforeCm] === at ? used[beforeCm]! : 0;
      if (by[beforeCm] === -1 || before >= count) continue;
      by[cm] = at;
      used[cm] = before + 1;
    }
  }
  const below = new Int32Array(mostCm + 2);
  for (let cm = 0; cm <= mostCm; cm += 1) below[cm + 1] = below[cm]! + (by[cm] === -1 ? 0 : 1);
  return { by, used, below };
}

function without(counts: Counts, kind: number): Counts {
  return counts.map((count, at) => (at === kind ? count - 1 : count));
}

export function lessCounts(counts: Counts, taken: Counts): Counts {
  return counts.map((count, at) => count - (taken[at] ?? 0));
}

/** Plain pipes of one family, and the lengths that they make with no cut and with one. */
export class PlainPipes {
  readonly kinds: readonly PipeKind[];
  private readonly mostCm: Centimetres;
  private readonly known = new Map<string, Sums>();

  /** No stretch of plain pipe is asked for that is longer than `mostCm`. */
  constructor(kinds: readonly PipeKind[], mostCm: Centimetres) {
    this.kinds = kinds;
    this.mostCm = mostCm;
  }

  get all(): Counts {
    return this.kinds.map(({ count }) => count);
  }

  private sums(counts: Counts): Sums {
    const key = counts.join();
    const known = this.known.get(key);
    if (known) return known;
    const sums = sumsOf(this.kinds, counts, this.mostCm);
    this.known.set(key, sums);
    return sums;
  }

  private reaches({ below }: Sums, fromCm: Centimetres, toCm: Centimetres): boolean {
    const [low, high] = [Math.max(0, fromCm), Math.min(this.mostCm, toCm)];
    return low <= high && below[high + 1]! > below[low]!;
  }

  /** The fewest cuts, none or one, with which pipes take up a length in a range. */
  cutsFor(counts: Counts, fromCm: Centimetres, toCm: Centimetres): 0 | 1 | undefined {
    if (this.reaches(this.sums(counts), fromCm, toCm)) return 0;
    const cut = this.kinds.some((kind, at) => {
      if ((counts[at] ?? 0) === 0) return false;
      const { fromCm: leastCm, toCm: mostCm } = cutRange(kind);
      const { insertionCm } = kind;
      return (
        leastCm <= mostCm &&
        this.reaches(
          this.sums(without(counts, at)),
          fromCm - (mostCm - insertionCm),
          toCm - (leastCm - insertionCm),
        )
      );
    });
    return cut ? 1 : undefined;
  }

  private whole(counts: Counts, fromCm: Centimetres, toCm: Centimetres): Piece[] | undefined {
    const { by, used } = this.sums(counts);
    for (let cm = Math.max(0, fromCm); cm <= Math.min(this.mostCm, toCm); cm += 1) {
      if (by[cm] === -1) continue;
      const pieces: Piece[] = [];
      for (let restCm = cm; restCm > 0;) {
        const kind = this.kinds[by[restCm]!]!;
        const count = used[restCm]!;
        pieces.unshift(...Array<Piece>(count).fill({ kind }));
        restCm -= count * takesUpCm(kind);
      }
      return pieces;
    }
    return undefined;
  }

  /** Pipes that take up a length in a range, with the fewest cuts; a cut one stands on top. */
  lay(counts: Counts, fromCm: Centimetres, toCm: Centimetres): Piece[] | undefined {
    const whole = this.whole(counts, fromCm, toCm);
    if (whole) return whole;
    for (const [at, kind] of this.kinds.entries()) {
      if ((counts[at] ?? 0) === 0) continue;
      const { fromCm: leastCm, toCm: mostCm } = cutRange(kind);
      if (leastCm > mostCm) continue;
      const { insertionCm } = kind;
      const below = this.whole(
        without(counts, at),
        fromCm - (mostCm - insertionCm),
        toCm - (leastCm - insertionCm),
      );
      if (!below) continue;
      const belowCm = below.reduce((sum, piece) => sum + takesUpCm(piece.kind), 0);
      const cutCm = Math.max(leastCm, fromCm - belowCm + insertionCm);
      return [...below, { kind, cutCm }];
    }
    return undefined;
  }

  /** Every choice of whole pipes that takes up no more than a length. */
  choices(counts: Counts, mostCm: Centimetres): { counts: Counts; cm: Centimetres }[] {
    let choices: { counts: number[]; cm: Centimetres }[] = [{ counts: [], cm: 0 }];
    for (const [at, kind] of this.kinds.entries()) {
      const stepCm = takesUpCm(kind);
      choices = choices
        .flatMap((choice) => {
          const most = Math.min(counts[at] ?? 0, Math.floor((mostCm - choice.cm) / stepCm));
          return Array.from({ length: most + 1 }, (_, count) => ({
            counts: [...choice.counts, count],
            cm: choice.cm + count * stepCm,
          }));
        })
        .slice(0, mostChoices);
    }
    return choices;
  }
}

/** More ways to choose pipes are not tried, so that pipes all different in length end in time. */
const mostChoices = 4000;
