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

/** Edges between dark and light as steps from corner to corner, by the corner they start from. */
function edgesOf(squares: Squares): Map<string, Point[]> {
  const edges = new Map<string, Point[]>();
  const dark = (x: number, y: number) => squares[y]?.[x] ?? false;
  const put = (x: number, y: number, to: Point) =>
    edges.set(`${x} ${y}`, [...(edges.get(`${x} ${y}`) ?? []), to]);
  squares.forEach((row, y) =>
    row.forEach((is, x) => {
      if (!is) return;
      if (!dark(x, y - 1)) put(x, y, [x + 1, y]);
      if (!dark(x + 1, y)) put(x + 1, y, [x + 1, y + 1]);
      if (!dark(x, y + 1)) put(x + 1, y + 1, [x, y + 1]);
      if (!dark(x - 1, y)) put(x, y + 1, [x, y]);
    }),
  );
  return edges;
}

/** Takes the edge that turns most to the right, so that squares that touch at a corner stay apart. */
function takeNext(edges: Map<string, Point[]>, [x, y]: Point, came: number): [Point, number] {
  const open = edges.get(`${x} ${y}`)!;
  const ways = open.map(([toX, toY]) =>
    round.findIndex(([dx, dy]) => dx === toX - x && dy === toY - y),
  );
  const at = ways.findIndex((way) => open.length === 1 || way === (came + 1) % 4);
  const chosen = Math.max(at, 0);
  const [to] = open.splice(chosen, 1);
  if (open.length === 0) edges.delete(`${x} ${y}`);
  return [to!, ways[chosen]!];
}

/** One closed line along the edges, its straight stretches in one step each. */
function loopFrom(edges: Map<string, Point[]>, start: Point): Point[] {
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
  while (edges.size > 0) {
    const [left, top] = edges.keys().next().value!.split(' ').map(Number) as [number, number];
    loopFrom(edges, [left, top]).forEach(([cx, cy], at) =>
      segments.push([at === 0 ? 'M' : 'L', x + cx * side, y + cy * side]),
    );
    segments.push(['Z']);
  }
  return segments;
}
