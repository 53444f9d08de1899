import type { PaperMm } from '../../base/units.ts';
import type { Box } from '../items.ts';

/** A box in columns of one width, side by side. */
export function columnsOf(box: Box, count: number, gap: PaperMm): Box[] {
  const width = (box.width - gap * (count - 1)) / count;
  return Array.from({ length: count }, (_, at) => ({
    ...box,
    x: box.x + at * (width + gap),
    width,
  }));
}
