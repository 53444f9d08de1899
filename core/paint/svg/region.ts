import type { RegionItem } from '../../drawing/items.ts';
import { hatchId } from './ids.ts';
import { sourceOf, type SvgNode, type TreeOptions } from './node.ts';
import { outline } from './path.ts';

function filled(d: string, fill: string): SvgNode {
  return { name: 'path', attributes: { d, fill } };
}

/** The ground first, the hatch over it. */
export function regionNode(item: RegionItem, options: TreeOptions): SvgNode {
  const d = outline(item.segments);
  const ground = item.ground ? [filled(d, item.ground)] : [];
  const hatch = filled(d, `url(#${hatchId(item.hatch, options)})`);
  return { name: 'g', attributes: sourceOf(item), children: [...ground, hatch] };
}
