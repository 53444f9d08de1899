import type { Box, GroupItem, HatchTile, Item, RegionItem } from '../../drawing/items.ts';
import { boxAttributes } from './box.ts';
import { hatchNode } from './hatch.ts';
import { clipId, hatchId } from './ids.ts';
import { onceFor, type SvgNode, type TreeOptions } from './node.ts';

type Referring = RegionItem | GroupItem;

/** What refers to hatches or clips, by group: one that stays the same is looked through once. */
const known = new WeakMap<Item, readonly Referring[]>();

function referring(item: Item): readonly Referring[] {
  if (item.kind === 'region') return [item];
  if (item.kind !== 'group') return [];
  const found = known.get(item) ?? [item, ...item.items.flatMap(referring)];
  known.set(item, found);
  return found;
}

/** One tile may serve under two names, each with a node of its own. */
function knownHatch(key: string, tile: HatchTile, options: TreeOptions): SvgNode {
  const node = onceFor(tile, options, () => hatchNode(key, tile, options));
  return node.attributes.id === hatchId(key, options) ? node : hatchNode(key, tile, options);
}

function hatchNodes(
  items: readonly Referring[],
  hatches: Readonly<Record<string, HatchTile>>,
  options: TreeOptions,
): SvgNode[] {
  const keys = new Set(items.flatMap((item) => (item.kind === 'region' ? [item.hatch] : [])));
  return [...keys].map((key) => {
    const tile = hatches[key];
    if (!tile) throw new Error(`The drawing has no hatch called ${key}`);
    return knownHatch(key, tile, options);
  });
}

function clipNode(id: string, box: Box): SvgNode {
  const rect = { name: 'rect', attributes: boxAttributes(box) };
  return { name: 'clipPath', attributes: { id }, children: [rect] };
}

function clipNodes(items: readonly Referring[], options: TreeOptions): SvgNode[] {
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
  const every = items.flatMap(referring);
  const children = [...hatchNodes(every, hatches, options), ...clipNodes(every, options)];
  return { name: 'defs', attributes: {}, children };
}
