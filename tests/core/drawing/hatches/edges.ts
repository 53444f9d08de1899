import type { HatchTile, PathItem } from '../../../../core/drawing/items.ts';

type Point = readonly [number, number];

const stepsOfCurve = 32;

/** Places nearer than this are one: steep lines magnify the rounding of their ends. */
const onePlace = 0.02;

function onCurve([a, b, c, d]: readonly number[], t: number): number {
  const u = 1 - t;
  return u ** 3 * a! + 3 * u * u * t * b! + 3 * u * t * t * c! + t ** 3 * d!;
}

/** A mark's outline as lists of points, curves in small chords. */
function outlines(mark: PathItem): Point[][] {
  const lists: Point[][] = [];
  for (const [kind, ...f] of mark.segments as readonly (readonly [string, ...number[]])[]) {
    const list = lists.at(-1)!;
    if (kind === 'M') lists.push([[f[0]!, f[1]!]]);
    if (kind === 'L') list.push([f[0]!, f[1]!]);
    if (kind === 'Z') list.push(list[0]!);
    if (kind === 'C') {
      const [x, y] = list.at(-1)!;
      for (let one = 1; one <= stepsOfCurve; one++)
        list.push([
          onCurve([x, f[0]!, f[2]!, f[4]!], one / stepsOfCurve),
          onCurve([y, f[1]!, f[3]!, f[5]!], one / stepsOfCurve),
        ]);
    }
  }
  return lists;
}

function crossingsOfList(list: readonly Point[], axis: 0 | 1, edge: number): number[] {
  const other = axis === 0 ? 1 : 0;
  return list.slice(1).flatMap((to, one) => {
    const from = list[one]!;
    // Touching from below counts, touching from above does not: each crossing once.
    if (from[axis] < edge === to[axis] < edge) return [];
    const share = (edge - from[axis]) / (to[axis] - from[axis]);
    return [from[other] + share * (to[other] - from[other])];
  });
}

/**
 * Where the outlines of a tile's marks cross the edge at `edge` of an axis, within the tile,
 * sorted, each place once. A place at the far end is the same as one at the near end.
 */
export function crossings(tile: HatchTile, axis: 0 | 1, edge: number): number[] {
  const side = axis === 0 ? tile.height : tile.width;
  const places = tile.marks
    .flatMap((mark) => outlines(mark).flatMap((list) => crossingsOfList(list, axis, edge)))
    .filter((place) => place > -onePlace && place < side + onePlace)
    .map((place) => (place > side - onePlace ? place - side : place))
    .sort((a, b) => a - b);
  return places.filter((place, one) => one === 0 || place - places[one - 1]! > onePlace);
}
