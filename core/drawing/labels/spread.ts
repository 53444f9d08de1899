import type { PaperMm } from '../../base/units.ts';

export interface Wanted {
  /** Where the label's middle would like to stand. */
  readonly middle: PaperMm;
  readonly height: PaperMm;
}

interface Cluster {
  first: number;
  last: number;
  height: PaperMm;
  top: PaperMm;
}

/**
 * Spreads labels along a line so that none overlaps and their order stays, each as near to its
 * wish as the others let it (least squares on the displacements: overlapping neighbours merge
 * into a cluster that stands at the mean of its members' wishes; pool-adjacent-violators,
 * Ayer et al. 1955, from memory). Wishes must be in rising order. Returns the tops; undefined when
 * the labels together are higher than the room.
 */
export function spread(
  wanted: readonly Wanted[],
  from: PaperMm,
  to: PaperMm,
): PaperMm[] | undefined {
  const total = wanted.reduce((sum, { height }) => sum + height, 0);
  if (total > to - from + 1e-9) return undefined;
  const clusters: Cluster[] = [];
  wanted.forEach(({ middle, height }, at) => {
    clusters.push(kept({ first: at, last: at, height, top: middle - height / 2 }, from, to));
    while (overlaps(clusters)) merge(clusters, wanted, from, to);
  });
  return clusters.flatMap((cluster) => topsOf(cluster, wanted));
}

function kept(cluster: Cluster, from: PaperMm, to: PaperMm): Cluster {
  return { ...cluster, top: Math.max(from, Math.min(cluster.top, to - cluster.height)) };
}

function overlaps(clusters: readonly Cluster[]): boolean {
  const [upper, lower] = clusters.slice(-2);
  return upper !== undefined && lower !== undefined && upper.top + upper.height > lower.top + 1e-9;
}

function merge(clusters: Cluster[], wanted: readonly Wanted[], from: PaperMm, to: PaperMm): void {
  const lower = clusters.pop()!;
  const upper = clusters.pop()!;
  const { first } = upper;
  const { last } = lower;
  let below = 0;
  let sum = 0;
  for (let at = first; at <= last; at += 1) {
    const { middle, height } = wanted[at]!;
    sum += middle - height / 2 - below;
    below += height;
  }
  clusters.push(kept({ first, last, height: below, top: sum / (last - first + 1) }, from, to));
}

function topsOf({ first, last, top }: Cluster, wanted: readonly Wanted[]): PaperMm[] {
  const tops: PaperMm[] = [];
  let at = top;
  for (let index = first; index <= last; index += 1) {
    tops.push(at);
    at += wanted[index]!.height;
  }
  return tops;
}
