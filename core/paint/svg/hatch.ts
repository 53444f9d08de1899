import type { HatchTile } from '../../drawing/items.ts';
import { boxAttributes } from './box.ts';
import { hatchId } from './ids.ts';
import type { SvgNode, TreeOptions } from './node.ts';
import { pathNode } from './path.ts';

/** Tiles are laid from the page's corner, so that neighbours with one hatch join without a seam. */
export function hatchNode(key: string, tile: HatchTile, options: TreeOptions): SvgNode {
  const { width, height, marks } = tile;
  return {
    name: 'pattern',
    attributes: {
      id: hatchId(key, options),
      patternUnits: 'userSpaceOnUse',
      ...boxAttributes({ x: 0, y: 0, width, height }),
    },
    children: marks.map(pathNode),
  };
}
