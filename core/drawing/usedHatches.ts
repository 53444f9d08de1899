import { tilesFor } from './hatches/index.ts';
import type { HatchTile, Item, Page } from './items.ts';

/** Adds the hatches of items to those found, in order of first use. */
function gather(items: readonly Item[], found: Set<string>): void {
  for (const item of items) {
    if (item.kind === 'region') found.add(item.hatch);
    else if (item.kind === 'group') gather(item.items, found);
  }
}

/** The tiles that the pages refer to, by name in order of first use. */
export function usedHatches(pages: readonly Page[]): Record<string, HatchTile> {
  const found = new Set<string>();
  for (const { items } of pages) gather(items, found);
  return tilesFor(found);
}
