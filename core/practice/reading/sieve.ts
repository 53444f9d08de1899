import type { Millimetres } from '../../base/units.ts';

/** A point of a sieve curve: what share passes an opening, per cent by mass. */
export interface SievePoint {
  readonly size: Millimetres;
  readonly finer: number;
}

/** From the finest sieve up; nothing where a coarser sieve would pass less than a finer one. */
function inOrder(curve: readonly SievePoint[]): readonly SievePoint[] {
  const sorted = curve.filter(({ size }) => size > 0).sort((a, b) => a.size - b.size);
  const rises = sorted.every(({ size, finer }, at) => {
    const before = sorted[at - 1];
    return before === undefined || (before.finer <= finer && before.size < size);
  });
  return rises ? sorted : [];
}

/**
 * The size than which a share (per cent by mass) is finer: d30 for 30. Between two sieves it is
 * interpolated on the logarithm of the size. Unknown where the curve does not reach that share
 * or contradicts itself.
 */
export function sizeFiner(curve: readonly SievePoint[], percent: number): Millimetres | undefined {
  const points = inOrder(curve);
  const at = points.findIndex(({ finer }) => finer >= percent);
  const [below, above] = [points[at - 1], points[at]];
  if (!above) return undefined;
  if (above.finer === percent) return above.size;
  if (!below) return undefined;
  const share = (percent - below.finer) / (above.finer - below.finer);
  return below.size * (above.size / below.size) ** share;
}

/** How uneven grain is: d60 / d10. */
export function uniformity(curve: readonly SievePoint[]): number | undefined {
  const [d10, d60] = [sizeFiner(curve, 10), sizeFiner(curve, 60)];
  return d10 === undefined || d60 === undefined ? undefined : d60 / d10;
}
