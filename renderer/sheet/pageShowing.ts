import type { Drawing, Item } from '../../core/drawing/items.ts';
import type { RecordPath } from '../../core/base/recordPath.ts';
import { liesIn } from '../state/selection.ts';

function shows(item: Item, path: RecordPath): boolean {
  if (item.source !== undefined && liesIn(item.source, path)) return true;
  return item.kind === 'group' && item.items.some((inner) => shows(inner, path));
}

/**
 * The page (from 0) on which a path can be seen: the one at hand where that shows it, else the
 * first that does; undefined where none does.
 */
export function pageShowing(
  drawing: Drawing,
  path: RecordPath,
  atHand: number,
): number | undefined {
  const has = (page: number) => drawing.pages[page]?.items.some((item) => shows(item, path));
  if (has(atHand)) return atHand;
  return [...drawing.pages.keys()].find(has);
}
