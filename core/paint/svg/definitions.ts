import type { Box, HatchTile, Item } from '../../drawing/items.ts';
import { boxAttributes } from './box.ts';
import { hatchNode } from './hatch.ts';
import { clipId } from './ids.ts';
import type { SvgNode, TreeOptions } from './node.ts';

function everyItem(items: readonly Item[]): Item[] {
  return items.flatMap((item) =>
    item.kind === 'group' ? [item, ...everyItem(item.items)] : [item],
  );
}

function hatchNodes(
  items: readonly Item[],
  hatches: Readonly<Record<string, HatchTile>>,
  options: TreeOptions,
): SvgNode[] {
  const keys = new Set(items.flatMap((item) => (item.kind === 'region' ? [item.hatch] : [])));
  return [...keys].map((key) => {
    const tile = hatches[key];
    if (!tile) throw new Error(`The drawing has no hatch called ${key}`);
    return hatchNode(key, tile, options);
  });
}

function clipNode(id: string, box: Box): SvgNode {
  const rect = { name: 'rect', attributes: boxAttributes(box) };
  return { name: 'clipPath', attributes: { id }, children: [rect] };
}

function clipNodes(items: readonly Item[], options: TreeOptions): SvgNode[] {
  const boxes = new Map<string, Box>();
  for (const item of items)
    if (item.kind === 'group' && item.clip) boxes.set(clipId(item.clip, options), item.clip);
  return [...boxes].map(([id, box]) => clipNode(id, box));
}

/** The hatches and clips that a page refers to, each once. */
export function definitions(
  items: readonly Item[],
  hatches: Readonly<Record<string, HatchTile>>,
  options: TreeOptions,
): SvgNode {
  const every = everyItem(items);
  const children = [...hatchNodes(every, hatches, options), ...clipNodes(every, options)];
  return { name: 'defs', attributes: {}, children };
}
