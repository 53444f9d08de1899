import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import type { Block } from '../../parts/block.ts';
import type { CommitteeKit } from './committeeKit.ts';

/** Height of blocks under each other, with the gaps between them. */
export function stackedHeight({ spacing }: CommitteeKit, blocks: readonly Block[]): PaperMm {
  const gaps = Math.max(0, blocks.length - 1) * spacing.gap;
  return blocks.reduce((sum, { height }) => sum + height, gaps);
}

/** Blocks drawn under each other, from an upper edge. */
export function drawDown(
  kit: CommitteeKit,
  blocks: readonly Block[],
  x: PaperMm,
  y: PaperMm,
): Item[] {
  let top = y;
  return blocks.flatMap((block) => {
    const own = top;
    top += block.height + kit.spacing.gap;
    return block.draw(x, own);
  });
}

/** Blocks under each other as one. */
export function stacked(kit: CommitteeKit, blocks: readonly Block[]): Block {
  return { height: stackedHeight(kit, blocks), draw: (x, y) => drawDown(kit, blocks, x, y) };
}

/** Two columns of blocks, the second at a distance from the first's left edge. */
export function beside(
  kit: CommitteeKit,
  left: readonly Block[],
  right: readonly Block[],
  at: PaperMm,
): Block {
  return {
    height: Math.max(stackedHeight(kit, left), stackedHeight(kit, right)),
    draw: (x, y) => [...drawDown(kit, left, x, y), ...drawDown(kit, right, x + at, y)],
  };
}
