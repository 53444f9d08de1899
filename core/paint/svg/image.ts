import type { ImageItem } from '../../drawing/items.ts';
import { boxAttributes } from './box.ts';
import { sourceOf, type SvgNode } from './node.ts';

export function imageNode(item: ImageItem): SvgNode {
  return {
    name: 'image',
    attributes: {
      ...sourceOf(item),
      ...boxAttributes(item),
      preserveAspectRatio: 'none',
      href: item.data,
      role: 'img',
      'aria-label': item.says,
    },
  };
}
