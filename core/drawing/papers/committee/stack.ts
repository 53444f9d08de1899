import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import type { Block } from '../../parts/block.ts';
import { blockGap } from './committeeKit.ts';

/** Height of blocks under each other, with the gaps between them. */
export function stackedHeight(blocks: readonly Block[]): PaperMm {
  const gaps = Math.max(0, blocks.length - 1) * blockGap;
  return blocks.reduce((sum, { height }) => sum + height, gaps);
}

/** Blocks drawn under each other, from an upper edge. */
export function drawDown(blocks: readonly Block[], x: PaperMm, y: PaperMm): Item[] {
  let top = y;
  return blocks.flatMap((block) => {
    const own = top;
    top += block.height + blockGap;
    return block.draw(x, own);
  });
}

/** Blocks under each other as one. */
export function stacked(blocks: readonly Block[]): Block {
  return { height: stackedHeight(blocks), draw: (x, y) => drawDown(blocks, x, y) };
}

/** Two columns of blocks, the second at a distance from the first's left edge. */
export function beside(left: readonly Block[], right: readonly Block[], at: PaperMm): Block {
  return {
    height: Math.max(stackedHeight(left), stackedHeight(right)),
    draw: (x, y) => [...drawDown(left, x, y), ...drawDown(right, x + at, y)],
  };
}
