import type { Box } from '../../drawing/items.ts';
import { mm } from './number.ts';
import type { TreeOptions } from './node.ts';

/** Keys of hatches may hold any letter; an id inside url(#…) may not. */
function idLetters(key: string): string {
  return key.replace(/[^A-Za-z0-9-]/gu, (letter) => `_${letter.codePointAt(0)!.toString(16)}_`);
}

export function hatchId(key: string, { idPrefix = '' }: TreeOptions): string {
  return `${idPrefix}hatch-${idLetters(key)}`;
}

/** Equal boxes share one clip, so its id is made of the box. */
export function clipId({ x, y, width, height }: Box, { idPrefix = '' }: TreeOptions): string {
  return `${idPrefix}clip-${[x, y, width, height].map(mm).join('_')}`;
}
