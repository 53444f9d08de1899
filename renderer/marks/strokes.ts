/** A point in the box of a mark, 100 wide and 40 high. */
export type MarkPoint = [number, number];

export const padSize = { width: 100, height: 40 } as const;

/** Nearer than this to the last one a point tells nothing new. */
const nearest = 0.6;

const clamp = (value: number, most: number) => Math.min(most, Math.max(0, value));
const rounded = (value: number) => Math.round(value * 10) / 10;

/** Where a pointer is in a pad that stands on the screen. */
export function pointIn(
  { left, top, width, height }: Pick<DOMRect, 'left' | 'top' | 'width' | 'height'>,
  x: number,
  y: number,
): MarkPoint {
  const across = ((x - left) / width) * padSize.width;
  const down = ((y - top) / height) * padSize.height;
  return [rounded(clamp(across, padSize.width)), rounded(clamp(down, padSize.height))];
}

/** A stroke with one more point, unless that is as good as the last one. */
export function grown(stroke: readonly MarkPoint[], point: MarkPoint): readonly MarkPoint[] {
  const last = stroke.at(-1);
  if (last && Math.hypot(point[0] - last[0], point[1] - last[1]) < nearest) return stroke;
  return [...stroke, point];
}

/** A stroke as SVG takes it. */
export function strokePath(stroke: readonly (readonly number[])[]): string {
  return stroke.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}
