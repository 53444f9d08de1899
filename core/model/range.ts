import type { DepthM } from '../base/units.ts';

/** A stretch of depth, from < to. */
export interface Range {
  readonly fromM: DepthM;
  readonly toM: DepthM;
}

/** A stretch of depth and what was found to stand there. */
export interface Laid<T> extends Range {
  readonly item: T;
}

const micronsPerM = 1e6;
/** Beyond this, rounding to a micron would lose or overflow digits. */
const roundableM = 1e8;

/**
 * Depths are kept to the micron, so that a sum of pipes that should end at 24 m does end there
 * and leaves no sliver between two parts.
 */
export function roundDepth(depthM: DepthM): DepthM {
  if (!(Math.abs(depthM) < roundableM)) return depthM;
  return Math.round(depthM * micronsPerM) / micronsPerM + 0;
}

/** True where a range of the record can be placed at all. */
export function isRange({ fromM, toM }: Range): boolean {
  return Number.isFinite(fromM) && Number.isFinite(toM) && fromM < toM;
}

/** The bounds in order of depth, each once. */
function sortBounds(bounds: readonly DepthM[]): DepthM[] {
  return [...new Set(bounds)].sort((a, b) => a - b);
}

/** The stretches between neighbouring bounds: nothing changes within one. */
export function cellsBetween(bounds: readonly DepthM[]): Range[] {
  return sortBounds(bounds)
    .map((fromM, at, all) => ({ fromM, toM: all[at + 1] ?? fromM }))
    .filter(isRange);
}

export function boundsOf(ranges: readonly Range[]): DepthM[] {
  return ranges.flatMap(({ fromM, toM }) => [fromM, toM]);
}

export function covers(range: Range, cell: Range): boolean {
  return range.fromM <= cell.fromM && range.toM >= cell.toM;
}

/** True where `inner` lies in `outer` and is not the same range. */
export function liesWithin(inner: Range, outer: Range): boolean {
  return covers(outer, inner) && !covers(inner, outer);
}

/** The part of a range between two depths, or nothing. */
export function cut(range: Range, fromM: DepthM, toM: DepthM): Range | undefined {
  const part = { fromM: Math.max(range.fromM, fromM), toM: Math.min(range.toM, toM) };
  return isRange(part) ? part : undefined;
}

/** Joins neighbours that touch and that `same` holds alike; the first one's item stays. */
export function joinLaid<T>(laid: readonly Laid<T>[], same: (a: T, b: T) => boolean): Laid<T>[] {
  const joined: Laid<T>[] = [];
  for (const next of laid) {
    const last = joined.at(-1);
    if (last && last.toM === next.fromM && same(last.item, next.item))
      joined[joined.length - 1] = { ...last, toM: next.toM };
    else joined.push(next);
  }
  return joined;
}

/** Frees ranges of their overlaps: where several cover a depth, `prefer` picks one of two. */
export function layFlat<T extends Range>(
  items: readonly T[],
  prefer: (earlier: T, later: T) => T,
): Laid<T>[] {
  const laid = cellsBetween(boundsOf(items)).flatMap((cell) => {
    const there = items.filter((item) => covers(item, cell));
    return there.length === 0 ? [] : [{ ...cell, item: there.reduce(prefer) }];
  });
  return joinLaid(laid, (a, b) => a === b);
}

/** Every pair that shares a stretch of depth, with that stretch; the pair in the list's order. */
export function overlapsOf<T extends Range>(items: readonly T[]): Laid<readonly [T, T]>[] {
  return items.flatMap((one, at) =>
    items.slice(at + 1).flatMap((other) => {
      const shared = cut(one, other.fromM, other.toM);
      return shared ? [{ ...shared, item: [one, other] as const }] : [];
    }),
  );
}

/** The stretches between two depths that no range covers. */
export function gapsIn(ranges: readonly Range[], fromM: DepthM, toM: DepthM): Range[] {
  const cells = cellsBetween([fromM, toM, ...boundsOf(ranges)]).filter((cell) =>
    covers({ fromM, toM }, cell),
  );
  const bare = cells.filter((cell) => !ranges.some((range) => covers(range, cell)));
  return joinLaid(
    bare.map((cell) => ({ ...cell, item: undefined })),
    () => true,
  ).map(({ fromM, toM }) => ({ fromM, toM }));
}
