import type { Centimetres } from './centimetres.ts';
import type { Limits } from './limits.ts';
import type { Counts, Piece, PlainPipes } from './plainPipes.ts';
import { sumpLength, sumpPieces, sumpsOf, type Sump } from './sump.ts';

/** The plain pipe of a string, from the bottom up. */
export interface Fitted {
  readonly sump: readonly Piece[];
  readonly top: readonly Piece[];
  /** Depth of the string's foot. */
  readonly footCm: Centimetres;
}

/** Stands for no way to do it, among counts of cuts. */
export const never = 9;

/** Whether plain pipes complete a string round a slotted stretch, and with how few cuts. */
export class StringFitter {
  private readonly plains: PlainPipes;
  private readonly limits: Limits;
  private readonly depthCm: Centimetres;
  private readonly sumps: readonly Sump[];
  private readonly tops = new Map<string, Int8Array>();
  private readonly whole = new Map<string, Int8Array | undefined>();

  /** Of strings that stand no deeper than `depthCm`. */
  constructor(plains: PlainPipes, limits: Limits, depthCm: Centimetres) {
    this.plains = plains;
    this.limits = limits;
    this.depthCm = depthCm;
    this.sumps = sumpsOf(plains, limits);
  }

  private topRange(topCm: Centimetres): [Centimetres, Centimetres] {
    const { stickUpLeastCm, stickUpMostCm } = this.limits;
    return [topCm + stickUpLeastCm, topCm + stickUpMostCm];
  }

  /** Fewest cuts from the top slots to the casing's top, by the depth of the top slots. */
  private topCuts(left: Counts): Int8Array {
    const key = left.join();
    const held = this.tops.get(key);
    if (held) return held;
    const cuts = Int8Array.from(
      { length: this.depthCm + 1 },
      (_, topCm) => this.plains.cutsFor(left, ...this.topRange(topCm)) ?? never,
    );
    this.tops.set(key, cuts);
    return cuts;
  }

  private usable(footCm: Centimetres): Sump[] {
    return this.sumps.filter(
      (sump) => sumpLength(sump, this.limits, this.depthCm - footCm) !== undefined,
    );
  }

  private cutsWith(usable: readonly Sump[]): Int8Array | undefined {
    const cuts = new Int8Array(this.depthCm + 1).fill(never);
    for (const { left, cuts: below } of usable) {
      const above = this.topCuts(left);
      for (let topCm = 0; topCm <= this.depthCm; topCm += 1)
        if (above[topCm]! + below < cuts[topCm]!) cuts[topCm] = above[topCm]! + below;
    }
    return cuts.some((one) => one < never) ? cuts : undefined;
  }

  /**
   * Fewest cuts through plain pipe for slots that end at a depth, by the depth at which they
   * begin; `never` where no pipes on site do it, and nothing where they do at no depth.
   */
  cutsByTop(footCm: Centimetres): Int8Array | undefined {
    const usable = this.usable(footCm);
    const key = usable.map((sump) => this.sumps.indexOf(sump)).join();
    if (!this.whole.has(key)) this.whole.set(key, this.cutsWith(usable));
    return this.whole.get(key);
  }

  /** Whether slots somewhere between two depths can be completed, were the screens to suit. */
  isAnyPossible(topCm: Centimetres, footCm: Centimetres): boolean {
    // The higher the slots end, the more sumps have room.
    return (
      this.cutsByTop(topCm + 1)
        ?.subarray(topCm, footCm)
        .some((one) => one < never) ?? false
    );
  }

  /** The plain pipe for slots between two depths with the fewest cuts, then the longest sump. */
  fit(topCm: Centimetres, footCm: Centimetres): Fitted | undefined {
    const roomCm = this.depthCm - footCm;
    const choices = this.usable(footCm).map((sump) => ({
      sump,
      lengthCm: sumpLength(sump, this.limits, roomCm) ?? 0,
      cuts: sump.cuts + this.topCuts(sump.left)[topCm]!,
    }));
    const [best] = choices
      .filter(({ cuts }) => cuts < never)
      .sort((a, b) => a.cuts - b.cuts || b.lengthCm - a.lengthCm);
    const top = best && this.plains.lay(best.sump.left, ...this.topRange(topCm));
    if (!best || !top) return undefined;
    return { sump: sumpPieces(best.sump, best.lengthCm), top, footCm: footCm + best.lengthCm };
  }
}
