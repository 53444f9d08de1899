import type { Page } from '../../drawing/items.ts';
import type { Point } from './flatten.ts';

/** From a page's millimetres to the file's metres. */
export interface Ground {
  /** Metres for a millimetre of paper. */
  readonly metres: number;
  readonly at: (point: Point) => readonly [x: number, y: number];
}

/**
 * A page with a depth axis is drawn in metres of ground: y is 0 at ground level and falls with
 * depth, x is 0 in the middle of the section. Widths across the well keep the drawing's own
 * exaggeration. A page without an axis is as large as its paper, its lower left corner at 0. Throws
 * where the axis is broken, since no depth below a break would be true.
 */
export function groundOf({ axes, height }: Page): Ground {
  const axis = axes?.[0];
  const metres = axis ? 1 / axis.mmPerM : 0.001;
  const x0 = axis ? axis.spans.section.x + axis.spans.section.width / 2 : 0;
  const [first, second] = axis?.stretches ?? [];
  if (second) throw new Error('A page whose depth axis is broken is not drawn in metres');
  const y0 = axis && first ? first.top - first.fromM * axis.mmPerM : height;
  return { metres, at: ([x, y]) => [(x - x0) * metres, (y0 - y) * metres] };
}
