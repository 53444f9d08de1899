import { tilesFor } from './hatches/index.ts';
import type { HatchTile, Item, Page } from './items.ts';

function namesIn(items: readonly Item[]): string[] {
  return items.flatMap((item) => {
    if (item.kind === 'region') return [item.hatch];
    return item.kind === 'group' ? namesIn(item.items) : [];
  });
}

/** The tiles that the pages refer to, by name in order of first use. */
export function usedHatches(pages: readonly Page[]): Record<string, HatchTile> {
  return tilesFor(pages.flatMap(({ items }) => namesIn(items)));
}
