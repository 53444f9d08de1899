import type { Position } from './ellipsoid.ts';

/**
 * A stretch of the globe, degrees. `east` may be beyond 180: it is never less than `west`, so that
 * a stretch across the date line stays whole.
 */
export interface Extent {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

/** An angle brought into the turn that begins at `from`, degrees. */
export function turned(degrees: number, from: number): number {
  if (degrees >= from && degrees < from + 360) return degrees;
  return degrees - 360 * Math.floor((degrees - from) / 360);
}

/** The shortest stretch of longitudes that holds all: it begins after their widest gap. */
function shortestArc(longitudes: readonly number[]): readonly [west: number, east: number] {
  const sorted = longitudes.map((one) => turned(one, -180)).sort((a, b) => a - b);
  let [west, east] = [sorted[0]!, sorted.at(-1)!];
  let widest = west + 360 - east;
  sorted.slice(1).forEach((next, at) => {
    const gap = next - sorted[at]!;
    if (gap > widest) [widest, west, east] = [gap, next, sorted[at]! + 360];
  });
  return [west, east];
}

/** The smallest stretch that holds all positions; undefined for none. */
export function extentOf(positions: readonly Position[]): Extent | undefined {
  if (positions.length === 0) return undefined;
  const [west, east] = shortestArc(positions.map(({ longitude }) => longitude));
  let [south, north] = [90, -90];
  for (const { latitude } of positions) {
    south = Math.min(south, latitude);
    north = Math.max(north, latitude);
  }
  return { west, east, south, north };
}

export function centreOf({ west, east, south, north }: Extent): Position {
  return { latitude: (south + north) / 2, longitude: turned((west + east) / 2, -180) };
}
