import type { Box } from '../../drawing/items.ts';
import { mm } from './number.ts';

export function boxAttributes({ x, y, width, height }: Box): Record<string, string> {
  return { x: mm(x), y: mm(y), width: mm(width), height: mm(height) };
}
