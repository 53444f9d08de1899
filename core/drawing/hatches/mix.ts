import type { HatchTile, PathItem } from '../items.ts';
import { white } from '../pens.ts';
import type { Point } from '../shapes.ts';
import { commonSide, type Hatch } from './hatch.ts';
import { moved } from './marks.ts';
import { at, staggered } from './places.ts';
import { reachOf, wrap, type Reach } from './wrap.ts';

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

interface Mixture {
  readonly added: readonly PathItem[];
  readonly kept: readonly PathItem[];
}

/** The tile's marks over the square, each once where the tiles' repetitions coincide. */
function repeatedOver(tile: HatchTile): PathItem[] {
  const marks: PathItem[] = [];
  for (let x = 0; x < commonSide; x += tile.width)
    for (let y = 0; y < commonSide; y += tile.height)
      marks.push(...tile.marks.map((mark) => moved(mark, [x, y])));
  return [...new Map(marks.map((mark) => [JSON.stringify(mark.segments), mark])).values()];
}

/** Reaches in a square and in its eight neighbours. */
function surrounded(marks: readonly PathItem[]): Reach[] {
  const shifts = [-commonSide, 0, commonSide];
  return shifts.flatMap((x) =>
    shifts.flatMap((y) => marks.map((mark) => reachOf(moved(mark, [x, y])))),
  );
}

function touch(a: Reach, b: Reach): boolean {
  return (
    a.left < b.right + clearance &&
    b.left < a.right + clearance &&
    a.top < b.bottom + clearance &&
    b.top < a.bottom + clearance
  );
}

function isShort({ left, right, top, bottom }: Reach): boolean {
  return Math.max(right - left, bottom - top) <= longestBroken;
}

/** What is left of the main's marks when the second's stand at some places. */
function mixedAt(main: readonly PathItem[], second: Hatch, places: readonly Point[]): Mixture {
  const added = second.single.flatMap((part) => at(places, part));
  const taken = surrounded(added);
  const kept = main.filter((mark) => {
    const reach = reachOf(mark);
    return !isShort(reach) || !taken.some((one) => touch(one, reach));
  });
  return { added, kept };
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
function bestMixture(main: readonly PathItem[], second: Hatch): Mixture {
  const short = main.filter((mark) => isShort(reachOf(mark))).length;
  const broken = ({ kept }: Mixture) => main.length - kept.length;
  const tries = lattices.map(([columns, rows]) =>
    positions(columns, rows)
      .map((places) => mixedAt(main, second, places))
      .reduce((best, one) => (broken(one) < broken(best) ? one : best)),
  );
  return tries.find((one) => broken(one) <= short * mostBroken) ?? tries.at(-1)!;
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
  const { added, kept } = bestMixture(repeatedOver(main.tile), second);
  const seen = kept.some(isSolid) ? added.map(inWhite) : added;
  return { ...square, marks: [...kept, ...wrap(commonSide, commonSide, seen).marks] };
}
