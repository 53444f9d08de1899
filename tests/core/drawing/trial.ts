import type { Item, PathItem } from '../../../core/drawing/items.ts';
import type { View } from '../../../core/drawing/parts/columns.ts';
import { english } from '../../../core/drawing/words/en.ts';
import { readFonts } from '../../../electron/files/fonts.ts';
import { columnsOver } from './usualColumns.ts';

export const kit = { fonts: readFonts().metrics, words: english };

/** A page that shows ground to 30 m at 1:100 from y = 20, diameters at 1:10. */
export const view: View = {
  axis: { fromM: 0, toM: 30, scale: 100, top: 20 },
  columns: columnsOver(10, 190, ['strikes', 'samples', 'description']),
  body: { x: 10, y: 18, width: 190, height: 310 },
  widthScale: 10,
  first: true,
  last: true,
};

/** An item and all that stands within it. */
export function within(item: Item): Item[] {
  return [item, ...(item.kind === 'group' ? item.items.flatMap(within) : [])];
}

export function pathsIn(item: Item): PathItem[] {
  return within(item).filter((one) => one.kind === 'path');
}

/** All words of an item, in order, as they read. */
export function wordsIn(item: Item): string[] {
  return within(item).flatMap((one) => (one.kind === 'text' ? [one.text] : []));
}

/** Left, top, right and bottom of an outline of straight lines. */
export function boundsOf({ segments }: PathItem): [number, number, number, number] {
  const points = segments.flatMap((one) =>
    one[0] === 'M' || one[0] === 'L' ? [[one[1], one[2]] as const] : [],
  );
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
