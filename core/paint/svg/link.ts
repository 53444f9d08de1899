import { linkAddress } from '../../base/linkAddress.ts';
import type { LinkItem } from '../../drawing/items.ts';
import { boxAttributes } from './box.ts';
import { sourceOf, type SvgNode } from './node.ts';

function targetOf({ to }: LinkItem): Record<string, string> {
  if ('page' in to) return { href: `#page-${to.page}`, 'data-page': String(to.page) };
  const address = linkAddress(to.address);
  return address === undefined ? {} : { href: address };
}

/** A box that is felt and not seen. */
export function linkNode(item: LinkItem): SvgNode {
  const box = {
    name: 'rect',
    attributes: { ...boxAttributes(item.box), fill: 'none', 'pointer-events': 'all' },
  };
  return { name: 'a', attributes: { ...sourceOf(item), ...targetOf(item) }, children: [box] };
}
