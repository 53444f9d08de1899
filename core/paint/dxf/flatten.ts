import type { PaperMm } from '../../base/units.ts';
import type { Segment } from '../../drawing/items.ts';

export type Point = readonly [x: PaperMm, y: PaperMm];

/** Straight strokes from point to point. */
export interface Chain {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** How far a chord may lie from its curve. */
const tolerance: PaperMm = 0.02;

/** Chords for a curve: its control polygon's second differences bound how far it bends. */
function chordsFor(
  [ax, ay]: Point,
  [, bx, by, cx, cy, dx, dy]: Extract<Segment, readonly ['C', ...unknown[]]>,
): number {
  const bend = Math.max(
    Math.hypot(ax - 2 * bx + cx, ay - 2 * by + cy),
    Math.hypot(bx - 2 * cx + dx, by - 2 * cy + dy),
  );
  return Math.max(1, Math.ceil(Math.sqrt((0.75 * bend) / tolerance)));
}

function curvePoints(from: Point, curve: Extract<Segment, readonly ['C', ...unknown[]]>): Point[] {
  const [, bx, by, cx, cy, dx, dy] = curve;
  const chords = chordsFor(from, curve);
  return Array.from({ length: chords }, (_, at): Point => {
    const t = (at + 1) / chords;
    const u = 1 - t;
    const weights = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t] as const;
    const along = (a: number, b: number, c: number, d: number) =>
      weights[0] * a + weights[1] * b + weights[2] * c + weights[3] * d;
    return [along(from[0], bx, cx, dx), along(from[1], by, cy, dy)];
  });
}

/** An outline as chains of straight strokes, no farther from its curves than can be seen. */
export function flatten(segments: readonly Segment[]): Chain[] {
  const chains: Chain[] = [];
  let points: Point[] = [];
  const end = (closed: boolean) => {
    if (points.length > 1) chains.push({ points, closed });
    points = [];
  };
  let start: Point = [0, 0];
  for (const segment of segments) {
    if (segment[0] === 'M') {
      end(false);
      start = [segment[1], segment[2]];
      points = [start];
    } else if (segment[0] === 'L') points.push([segment[1], segment[2]]);
    else if (segment[0] === 'C') points.push(...curvePoints(points.at(-1) ?? start, segment));
    else {
      end(true);
      points = [start];
    }
  }
  end(false);
  return chains;
}

/** The strokes of a chain, the closing one too. */
export function strokesOf({ points, closed }: Chain): (readonly [Point, Point])[] {
  const open = points.slice(1).map((to, at) => [points[at]!, to] as const);
  const [first, last] = [points[0], points.at(-1)];
  const gap = closed && first && last && (first[0] !== last[0] || first[1] !== last[1]);
  return gap ? [...open, [last, first] as const] : open;
}
