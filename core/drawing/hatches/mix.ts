import type { HatchTile, PathItem } from '../items.ts';
import { white } from '../pens.ts';
import type { Point } from '../shapes.ts';
import { commonSide, type Hatch } from './hatch.ts';
import { moved } from './marks.ts';
import { at, staggered } from './places.ts';
import { reachOf, wrap } from './wrap.ts';

const square = { width: commonSide, height: commonSide };

/** White left between a mark of the second material and those of the main one, millimetres. */
const clearance = 0.2;

/** Marks longer than this are courses and waves, which go on behind the second's marks. */
const longestBroken = 4;

/** Columns and rows of the second's marks, about half as many as it has by itself, then fewer. */
const lattices: readonly (readonly [columns: number, rows: number])[] = [
  [3, 4],
  [2, 4],
  [2, 2],
];

/** The most of the main's marks that may give way to the second's. */
const mostBroken = 1 / 3;

/** Step in which a lattice is moved to find where it breaks fewest marks, millimetres. */
const search = 0.5;

/** A box about a mark, by its middle and half its sides. */
interface Room {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
}

function roomOf(mark: PathItem): Room {
  const { left, right, top, bottom } = reachOf(mark);
  return {
    x: (left + right) / 2,
    y: (top + bottom) / 2,
    halfWidth: (right - left) / 2,
    halfHeight: (bottom - top) / 2,
  };
}

/** The tile's marks over the square, each once where the tiles' repetitions coincide. */
function repeatedOver(tile: HatchTile): PathItem[] {
  const marks: PathItem[] = [];
  for (let x = 0; x < commonSide; x += tile.width)
    for (let y = 0; y < commonSide; y += tile.height)
      marks.push(...tile.marks.map((mark) => moved(mark, [x, y])));
  return [...new Map(marks.map((mark) => [JSON.stringify(mark.segments), mark])).values()];
}

/** How far apart two figures lie along a side that repeats: the shorter way round. */
function apart(a: number, b: number): number {
  const way = Math.abs(a - b) % commonSide;
  return Math.min(way, commonSide - way);
}

function touch(a: Room, b: Room): boolean {
  return (
    apart(a.x, b.x) < a.halfWidth + b.halfWidth + clearance &&
    apart(a.y, b.y) < a.halfHeight + b.halfHeight + clearance
  );
}

function isShort({ halfWidth, halfHeight }: Room): boolean {
  return 2 * Math.max(halfWidth, halfHeight) <= longestBroken;
}

/** Whether a mark of the main material gives way when the second's stands at some places. */
function givesWay(main: Room, second: readonly Room[], places: readonly Point[]): boolean {
  if (!isShort(main)) return false;
  return places.some(([dx, dy]) =>
    second.some((part) => touch(main, { ...part, x: part.x + dx, y: part.y + dy })),
  );
}

/** A lattice in all its positions; moving it by a column or by two rows changes nothing. */
function positions(columns: number, rows: number): Point[][] {
  const found: Point[][] = [];
  for (let dx = 0; dx < commonSide / columns; dx += search)
    for (let dy = 0; dy < (2 * commonSide) / rows; dy += search)
      found.push(
        staggered(square, columns, rows).map(([x, y]) => [
          (x + dx) % commonSide,
          (y + dy) % commonSide,
        ]),
      );
  return found;
}

/** The densest lattice, where it lies best, that leaves enough of the main's marks. */
function bestPlaces(main: readonly Room[], second: readonly Room[]): Point[] {
  const most = main.filter(isShort).length * mostBroken;
  let best: { places: Point[]; broken: number } | undefined;
  for (const [columns, rows] of lattices) {
    const tries = positions(columns, rows).map((places) => ({
      places,
      broken: main.filter((room) => givesWay(room, second, places)).length,
    }));
    best = tries.reduce((least, one) => (one.broken < least.broken ? one : least));
    if (best.broken <= most) break;
  }
  return best?.places ?? [];
}

/** Marks that lie on solid black are painted white. */
function inWhite(mark: PathItem): PathItem {
  return {
    ...mark,
    ...(mark.fill && { fill: white }),
    ...(mark.stroke && { stroke: { ...mark.stroke, ink: white } }),
  };
}

function isSolid(mark: PathItem): boolean {
  const { left, right, top, bottom } = reachOf(mark);
  const covers = left <= 0 && top <= 0 && right >= commonSide && bottom >= commonSide;
  return covers && mark.fill !== undefined;
}

/** The main material's hatch, with the second's mark in it at half frequency. */
export function mixedTile(main: Hatch, second: Hatch): HatchTile {
  const marks = repeatedOver(main.tile);
  const rooms = second.single.map(roomOf);
  const places = bestPlaces(marks.map(roomOf), rooms);
  const kept = marks.filter((mark) => !givesWay(roomOf(mark), rooms, places));
  const added = second.single.flatMap((part) => at(places, part));
  const seen = kept.some(isSolid) ? added.map(inWhite) : added;
  return { ...square, marks: [...kept, ...wrap(commonSide, commonSide, seen).marks] };
}
