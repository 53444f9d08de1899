import type { PaperMm } from '../../../base/units.ts';
import type { Segment } from '../../items.ts';
import type { Point } from '../../shapes.ts';

/** Rows of squares, true where dark. */
export type Squares = readonly (readonly boolean[])[];

/** Steps round a dark square, which lies on the right hand of each. */
const round = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** Corners are numbered along the rows. */
interface Edges {
  /** Corners of a row. */
  readonly across: number;
  /** Where the edges from a corner end, by its number; the corners in the order they were met. */
  readonly from: Map<number, Point[]>;
}

const cornerAt = ({ across }: Pick<Edges, 'across'>, x: number, y: number) => y * across + x;

/** Edges between dark and light as steps from corner to corner, by the corner they start from. */
function edgesOf(squares: Squares): Edges {
  const across = Math.max(0, ...squares.map(({ length }) => length)) + 1;
  const from = new Map<number, Point[]>();
  const dark = (x: number, y: number) => squares[y]?.[x] ?? false;
  const put = (x: number, y: number, to: Point) => {
    const ends = from.get(cornerAt({ across }, x, y));
    if (ends) ends.push(to);
    else from.set(cornerAt({ across }, x, y), [to]);
  };
  squares.forEach((row, y) =>
    row.forEach((is, x) => {
      if (!is) return;
      if (!dark(x, y - 1)) put(x, y, [x + 1, y]);
      if (!dark(x + 1, y)) put(x + 1, y, [x + 1, y + 1]);
      if (!dark(x, y + 1)) put(x + 1, y + 1, [x, y + 1]);
      if (!dark(x - 1, y)) put(x, y + 1, [x, y]);
    }),
  );
  return { across, from };
}

/** Takes the edge that turns most to the right, so that squares that touch at a corner stay apart. */
function takeNext(edges: Edges, [x, y]: Point, came: number): [Point, number] {
  const corner = cornerAt(edges, x, y);
  const open = edges.from.get(corner)!;
  const wayTo = ([toX, toY]: Point) =>
    round.findIndex(([dx, dy]) => dx === toX - x && dy === toY - y);
  const at = open.length === 1 ? 0 : open.findIndex((to) => wayTo(to) === (came + 1) % 4);
  const [to] = open.splice(Math.max(at, 0), 1);
  if (open.length === 0) edges.from.delete(corner);
  return [to!, wayTo(to!)];
}

/** One closed line along the edges, its straight stretches in one step each. */
function loopFrom(edges: Edges, start: Point): Point[] {
  const corners: Point[] = [];
  let here = start;
  let way = -1;
  do {
    const [to, next] = takeNext(edges, here, way);
    if (next !== way) corners.push(here);
    here = to;
    way = next;
  } while (here[0] !== start[0] || here[1] !== start[1]);
  return corners;
}

/**
 * The outline of all dark squares, to be filled in one go: squares that were painted one by one
 * would show seams. Light islands run the other way round than dark ones.
 */
export function outlineOf(squares: Squares, x: PaperMm, y: PaperMm, side: PaperMm): Segment[] {
  const edges = edgesOf(squares);
  const segments: Segment[] = [];
  while (edges.from.size > 0) {
    const corner: number = edges.from.keys().next().value!;
    const [left, top] = [corner % edges.across, Math.floor(corner / edges.across)];
    loopFrom(edges, [left, top]).forEach(([cx, cy], at) =>
      segments.push([at === 0 ? 'M' : 'L', x + cx * side, y + cy * side]),
    );
    segments.push(['Z']);
  }
  return segments;
}
