import type { Box, GroupItem, Item, Page, TextItem } from '../../core/drawing/items.ts';

/** Left, top, right and bottom, millimetres. */
export type Extent = readonly [number, number, number, number];

/** An item as a reader of the page meets it. */
export interface Placed {
  readonly item: Exclude<Item, GroupItem>;
  /** Names of the groups around it, the outermost first. */
  readonly groups: readonly string[];
  /** The nearest source on it or around it. */
  readonly source: string | undefined;
  readonly clip: Extent | undefined;
}

export type PlacedText = Placed & { readonly item: TextItem };

interface Around {
  readonly groups: readonly string[];
  readonly source: string | undefined;
  readonly clip: Extent | undefined;
}

export const edgesOf = ({ x, y, width, height }: Box): Extent => [x, y, x + width, y + height];

export function common(a: Extent, b: Extent | undefined): Extent {
  if (!b) return a;
  const [left, top] = [Math.max(a[0], b[0]), Math.max(a[1], b[1])];
  return [left, top, Math.min(a[2], b[2]), Math.min(a[3], b[3])];
}

function unfold(item: Item, around: Around): Placed[] {
  const source = item.source ?? around.source;
  if (item.kind !== 'group') return [{ ...around, item, source }];
  const own = item.clip && edgesOf(item.clip);
  const clip = own ? common(own, around.clip) : around.clip;
  const groups = [...around.groups, item.name ?? ''];
  return item.items.flatMap((one) => unfold(one, { groups, source, clip }));
}

/** All items of a page in painting order, out of their groups. */
export function placedOn({ items }: Page): Placed[] {
  return items.flatMap((item) => unfold(item, { groups: [], source: undefined, clip: undefined }));
}

export function isText(one: Placed): one is PlacedText {
  return one.item.kind === 'text';
}

export function textsOn(page: Page): PlacedText[] {
  return placedOn(page).filter(isText);
}

/** Groups of one name, wherever they stand on a page. */
export function groupsNamed(items: readonly Item[], name: string): GroupItem[] {
  return items.flatMap((item) => {
    if (item.kind !== 'group') return [];
    return item.name === name ? [item] : groupsNamed(item.items, name);
  });
}

/** A page without details, which are drawn at scales of their own. */
export function withoutDetails(page: Page): Page {
  const isDetails = (item: Item) => item.kind === 'group' && item.name === 'details';
  return { ...page, items: page.items.filter((item) => !isDetails(item)) };
}
