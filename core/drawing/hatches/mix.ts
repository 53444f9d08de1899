import type { HatchTile, PathItem } from '../items.ts';
import { commonSide, type Hatch } from './hatch.ts';
import { moved } from './marks.ts';
import { at, staggered } from './places.ts';
import { reachOf, wrap, type Reach } from './wrap.ts';

/** White left between a mark of the second material and those of the main one, millimetres. */
const clearance = 0.3;

/** Marks longer than this are courses and waves, which go on behind the second's marks. */
const longestBroken = 4;

/** Twelve of the second's marks in a square: about half as many as it has by itself. */
const columns = 3;
const rows = 4;

function repeatedTo(tile: HatchTile, side: number): PathItem[] {
  const marks: PathItem[] = [];
  for (let x = 0; x < side; x += tile.width)
    for (let y = 0; y < side; y += tile.height)
      marks.push(...tile.marks.map((mark) => moved(mark, [x, y])));
  return marks;
}

/** The marks of a square and those of its eight neighbours. */
function surrounded(marks: readonly PathItem[]): PathItem[] {
  const shifts = [-commonSide, 0, commonSide];
  return shifts.flatMap((x) => shifts.flatMap((y) => marks.map((mark) => moved(mark, [x, y]))));
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

/** The main material's hatch, with the second's mark in it at half frequency. */
export function mixedTile(main: Hatch, second: Hatch): HatchTile {
  const sides = { width: commonSide, height: commonSide };
  const places = staggered(sides, columns, rows);
  const marks = second.single.flatMap((part) => at(places, part));
  const added = wrap(commonSide, commonSide, marks);
  const taken = surrounded(added.marks).map(reachOf);
  const kept = repeatedTo(main.tile, commonSide).filter((mark) => {
    const reach = reachOf(mark);
    return !isShort(reach) || !taken.some((one) => touch(one, reach));
  });
  return { ...sides, marks: [...kept, ...added.marks] };
}
