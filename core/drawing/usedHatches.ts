import { tilesFor } from './hatches/index.ts';
import type { HatchTile, Item, Page } from './items.ts';

/** Names by group: one that stands in many drawings is looked through once. */
const known = new WeakMap<Item, readonly string[]>();

const none: readonly string[] = [];

function namesOf(item: Item): readonly string[] {
  if (item.kind === 'region') return [item.hatch];
  if (item.kind !== 'group') return none;
  const before = known.get(item);
  if (before) return before;
  const found = new Set<string>();
  for (const one of item.items) for (const name of namesOf(one)) found.add(name);
  const names = found.size === 0 ? none : [...found];
  known.set(item, names);
  return names;
}

/** The tiles that the pages refer to, by name in order of first use. */
export function usedHatches(pages: readonly Page[]): Record<string, HatchTile> {
  return tilesFor(pages.flatMap(({ items }) => items.flatMap(namesOf)));
}
