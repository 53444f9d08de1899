import { tilesFor } from './hatches/index.ts';
import type { HatchTile, Item, Page } from './items.ts';

/** Names by group: one that stands in many drawings is looked through once. */
const known = new WeakMap<Item, readonly string[]>();

function namesOf(item: Item): readonly string[] {
  if (item.kind === 'region') return [item.hatch];
  if (item.kind !== 'group') return [];
  const names = known.get(item) ?? [...new Set(item.items.flatMap(namesOf))];
  known.set(item, names);
  return names;
}

/** The tiles that the pages refer to, by name in order of first use. */
export function usedHatches(pages: readonly Page[]): Record<string, HatchTile> {
  return tilesFor(pages.flatMap(({ items }) => items.flatMap(namesOf)));
}
