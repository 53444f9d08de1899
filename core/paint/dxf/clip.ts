import { strokesOf, type Chain, type Point } from './flatten.ts';

/** An area by its outlines: what lies inside an odd number of them is in it. */
export type Area = readonly Chain[];

/** Whether a point lies in an area. */
export function isInside([x, y]: Point, area: Area): boolean {
  let inside = false;
  for (const chain of area)
    for (const [[ax, ay], [bx, by]] of strokesOf({ ...chain, closed: true }))
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  return inside;
}

/** Where along a stroke (0 to 1) it crosses an area's outlines, in order. */
function crossings([[ax, ay], [bx, by]]: readonly [Point, Point], area: Area): number[] {
  const [dx, dy] = [bx - ax, by - ay];
  const found: number[] = [];
  for (const chain of area)
    for (const [[px, py], [qx, qy]] of strokesOf({ ...chain, closed: true })) {
      const [ex, ey] = [qx - px, qy - py];
      const cross = dx * ey - dy * ex;
      if (cross === 0) continue;
      const along = ((px - ax) * ey - (py - ay) * ex) / cross;
      const on = ((px - ax) * dy - (py - ay) * dx) / cross;
      if (along > 0 && along < 1 && on >= 0 && on <= 1) found.push(along);
    }
  return found.sort((left, right) => left - right);
}

/** The pieces of one stroke that lie in an area. */
function piecesOf(stroke: readonly [Point, Point], area: Area): (readonly [Point, Point])[] {
  const [[ax, ay], [bx, by]] = stroke;
  const at = (t: number): Point => [ax + t * (bx - ax), ay + t * (by - ay)];
  const cuts = [0, ...crossings(stroke, area), 1];
  return cuts.slice(1).flatMap((to, index) => {
    const from = cuts[index]!;
    if (to - from < 1e-9 || !isInside(at((from + to) / 2), area)) return [];
    return [[at(from), at(to)] as const];
  });
}

const same = (left: Point, right: Point) =>
  Math.abs(left[0] - right[0]) < 1e-9 && Math.abs(left[1] - right[1]) < 1e-9;

/** What of a chain lies in an area, as open chains. */
export function clipChain(chain: Chain, area: Area): Chain[] {
  const clipped: Point[][] = [];
  for (const stroke of strokesOf(chain))
    for (const [from, to] of piecesOf(stroke, area)) {
      const last = clipped.at(-1);
      if (last && same(last.at(-1)!, from)) last.push(to);
      else clipped.push([from, to]);
    }
  return clipped.map((points) => ({ points, closed: false }));
}

/** The box around chains; undefined around none. */
export function boundsOf(chains: readonly Chain[]) {
  const points = chains.flatMap((chain) => chain.points);
  if (points.length === 0) return undefined;
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}
