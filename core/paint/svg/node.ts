import type { Item } from '../../drawing/items.ts';

/** An element as plain data: what the page joins into its tree and the writer writes. */
export interface SvgNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children?: readonly SvgNode[];
  /** Only on elements without children. */
  readonly text?: string;
}

export interface TreeOptions {
  /** Put before every id, for pages that stand in one document. */
  readonly idPrefix?: string;
  /**
   * Nodes of items painted before with the same prefix, for a page that is painted again and
   * again: an item that is still the same object keeps its node.
   */
  readonly known?: WeakMap<object, SvgNode>;
}

/** The node of a thing that is painted, made once where the painter remembers. */
export function onceFor(thing: object, { known }: TreeOptions, make: () => SvgNode): SvgNode {
  const node = known?.get(thing) ?? make();
  known?.set(thing, node);
  return node;
}

/** Says on the element which field of the record it shows. */
export function sourceOf({ source }: Pick<Item, 'source'>): Record<string, string> {
  return source === undefined ? {} : { 'data-path': source };
}
