import type { Drawing, Item } from '../items.ts';

/** Links lead to pages by number: behind other pages they lead as many further. */
function behind(item: Item, pages: number): Item {
  if (item.kind === 'group') return { ...item, items: item.items.map((one) => behind(one, pages)) };
  if (item.kind !== 'link' || !('page' in item.to)) return item;
  return { ...item, to: { page: item.to.page + pages } };
}

/** What the papers together say of themselves. */
export type Joint = Pick<Drawing, 'title' | 'subject' | 'language' | 'madeAt' | 'paperId'>;

/** Papers one behind the other in one drawing, as they are printed in one go. */
export function joinDrawings(drawings: readonly Drawing[], joint: Joint): Drawing {
  const pages: Drawing['pages'][number][] = [];
  for (const drawing of drawings) {
    const before = pages.length;
    for (const { width, height, items } of drawing.pages)
      pages.push({ width, height, items: items.map((item) => behind(item, before)) });
  }
  const hatches = Object.assign({}, ...drawings.map((one) => one.hatches)) as Drawing['hatches'];
  return { ...joint, author: '', pages, hatches };
}
