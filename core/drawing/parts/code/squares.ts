import type { PaperMm } from '../../../base/units.ts';
import type { Segment } from '../../items.ts';
import type { Point } from '../../shapes.ts';

/** Rows of squares, true where dark. */
export type Squares = readonly (readonly boolean[])[];

/** Steps round a dark square, which lies on the right hand of each, by the way that is taken. */
const round = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** Edges between dark and light. Corners are numbered along the rows. */
interface Edges {
  /** Corners of a row. */
  readonly across: number;
  /** Ways of the edges from a corner, by its number; the corners in the order they were met. */
  readonly from: Map<number, number[]>;
}

function edgesOf(squares: Squares): Edges {
  const across = Math.max(0, ...squares.map(({ length }) => length)) + 1;
  const from = new Map<number, number[]>();
  const dark = (x: number, y: number) => squares[y]?.[x] ?? false;
  const put = (x: number, y: number, way: number) => {
    const corner = y * across + x;
    const ways = from.get(corner);
    if (ways) ways.push(way);
    else from.set(corner, [way]);
  };
  squares.forEach((row, y) =>
    row.forEach((is, x) => {
      if (!is) return;
      if (!dark(x, y - 1)) put(x, y, 0);
      if (!dark(x + 1, y)) put(x + 1, y, 1);
      if (!dark(x, y + 1)) put(x + 1, y + 1, 2);
      if (!dark(x - 1, y)) put(x, y + 1, 3);
    }),
  );
  return { across, from };
}

/** Takes the edge that turns most to the right, so that squares that touch at a corner stay apart. */
function takeWay({ from }: Edges, corner: number, came: number): number {
  const ways = from.get(corner)!;
  const [way] = ways.splice(Math.max(0, ways.indexOf((came + 1) % 4)), 1);
  if (ways.length === 0) from.delete(corner);
  return way!;
}

/** One closed line along the edges, its straight stretches in one step each. */
function loopFrom(edges: Edges, start: number): Point[] {
  const corners: Point[] = [];
  const { across } = edges;
  let here = start;
  let came = -1;
  do {
    const way = takeWay(edges, here, came);
    if (way !== came) corners.push([here % across, Math.floor(here / across)]);
    const [dx, dy] = round[way]!;
    here += dy * across + dx;
    came = way;
  } while (here !== start);
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
    const start: number = edges.from.keys().next().value!;
    loopFrom(edges, start).forEach(([cx, cy], at) =>
      segments.push([at === 0 ? 'M' : 'L', x + cx * side, y + cy * side]),
    );
    segments.push(['Z']);
  }
  return segments;
}
