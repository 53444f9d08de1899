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
}

/** Says on the element which field of the record it shows. */
export function sourceOf({ source }: Pick<Item, 'source'>): Record<string, string> {
  return source === undefined ? {} : { 'data-path': source };
}
