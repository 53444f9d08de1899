/** What an independent reader finds on a painted page; millimetres from the top left corner. */
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  /** In painting order. */
  readonly texts: readonly ReadText[];
  readonly paths: readonly ReadPath[];
}

export interface ReadText {
  readonly text: string;
  /** Left end of the baseline. */
  readonly x: number;
  readonly y: number;
  readonly em: number;
  /** Degrees clockwise. */
  readonly turn: number;
}

export interface ReadPath {
  readonly filled: boolean;
  readonly stroked: boolean;
  /** Width of the stroke; 0 where there is none. */
  readonly stroke: number;
  /** Ends and control points, in turn. */
  readonly points: readonly Point[];
}

export type Point = readonly [x: number, y: number];

/** Left, top, right and bottom of a path's points. */
export function extentOf({ points }: ReadPath): [number, number, number, number] {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** Distance between the first and the last point. */
export function spanOf({ points }: ReadPath): number {
  const [x1, y1] = points[0]!;
  const [x2, y2] = points.at(-1)!;
  return Math.hypot(x2 - x1, y2 - y1);
}
