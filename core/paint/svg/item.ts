import type { Item } from '../../drawing/items.ts';
import { groupNode } from './group.ts';
import { imageNode } from './image.ts';
import { linkNode } from './link.ts';
import { onceFor, type SvgNode, type TreeOptions } from './node.ts';
import { pathNode } from './path.ts';
import { regionNode } from './region.ts';
import { textNode } from './text.ts';

export function itemNode(item: Item, options: TreeOptions): SvgNode {
  return onceFor(item, options, () => newNode(item, options));
}

function newNode(item: Item, options: TreeOptions): SvgNode {
  switch (item.kind) {
    case 'path':
      return pathNode(item);
    case 'text':
      return textNode(item);
    case 'region':
      return regionNode(item, options);
    case 'image':
      return imageNode(item);
    case 'group':
      return groupNode(item, options, (items) => items.map((inner) => itemNode(inner, options)));
    case 'link':
      return linkNode(item);
  }
}
