import type { GroupItem, Item } from '../../drawing/items.ts';
import { clipId } from './ids.ts';
import { sourceOf, type SvgNode, type TreeOptions } from './node.ts';

/** `nodesOf` is the painter's own switch, handed in so that files do not import in a circle. */
export function groupNode(
  item: GroupItem,
  options: TreeOptions,
  nodesOf: (items: readonly Item[]) => readonly SvgNode[],
): SvgNode {
  return {
    name: 'g',
    attributes: {
      ...sourceOf(item),
      ...(item.name === undefined ? {} : { 'data-name': item.name }),
      ...(item.clip ? { 'clip-path': `url(#${clipId(item.clip, options)})` } : {}),
    },
    children: nodesOf(item.items),
  };
}
