import type { Box } from '../../core/drawing/items.ts';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Pixels for a millimetre of paper, and where the page's corner stands in the window. */
export interface Standing {
  readonly k: number;
  readonly x: number;
  readonly y: number;
}

export type Fit = 'page' | 'width';

/** Pixels for a millimetre that zooming keeps within. */
export const scales: [number, number] = [0.5, 60];
/** Pixels left free round a fitted page. */
const rim = 12;

/** Where a page (millimetres) stands when it fits a window (pixels). */
export function fitted(how: Fit, page: Size, sight: Size): Standing {
  const wide = (sight.width - 2 * rim) / page.width;
  const high = (sight.height - 2 * rim) / page.height;
  const k = Math.max(scales[0], how === 'width' ? wide : Math.min(wide, high));
  return {
    k,
    x: (sight.width - k * page.width) / 2,
    y: Math.max(rim, (sight.height - k * page.height) / 2),
  };
}

/** Whether any part of a box (millimetres) can be seen in a window (pixels). */
export function inSight(box: Box, { k, x, y }: Standing, sight: Size): boolean {
  const right = box.x + box.width;
  const foot = box.y + box.height;
  return (
    right * k + x > 0 &&
    box.x * k + x < sight.width &&
    foot * k + y > 0 &&
    box.y * k + y < sight.height
  );
}
