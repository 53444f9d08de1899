import type { PaperMm } from '../../../base/units.ts';
import type { Block } from '../block.ts';
import type { Part, Piece } from './part.ts';

/** Height of each column, counted on over all pages. */
export type Room = (column: number) => PaperMm;

/** A block in its column. */
export interface Placed {
  readonly block: Block;
  readonly y: PaperMm;
  /** Of the parts that flow. */
  readonly part: number;
}

interface Placing {
  readonly room: Room;
  /** Which parts begin a page. */
  readonly fresh: readonly boolean[];
  /** Whether the first column is room left free on a page before, for the parts that fill it. */
  readonly freeFirst: boolean;
  readonly between: Block;
  /** Whether a page begins with a column. */
  pageStart(column: number): boolean;
}

/** Pieces that stay together, such as a title with the line under it. */
function chains(pieces: readonly Piece[]): Piece[][] {
  const all: Piece[][] = [];
  pieces.forEach((piece, at) => {
    if (at > 0 && pieces[at - 1]!.keeps) all.at(-1)!.push(piece);
    else all.push([piece]);
  });
  return all;
}

const heightOf = (blocks: readonly Block[]) => blocks.reduce((sum, { height }) => sum + height, 0);

/** What is placed in each column, counted on over all pages. */
export function placed(parts: readonly Part[], placing: Placing): Placed[][] {
  const { room, fresh, freeFirst, between, pageStart } = placing;
  const columns: Placed[][] = [[]];
  let y = 0;
  const put = (block: Block, part: number) => {
    columns.at(-1)!.push({ block, y, part });
    y += block.height;
  };
  const goOn = () => {
    columns.push([]);
    y = 0;
  };
  const isFree = () => freeFirst && columns.length === 1;
  parts.forEach(({ pieces, fills }, at) => {
    if (pieces.length === 0) return;
    if (isFree() && !fills) goOn();
    while (fresh[at] && !(y === 0 && pageStart(columns.length - 1))) goOn();
    const begun = columns.some((blocks) => blocks.length > 0);
    const parting = { ...between, gap: true, keeps: true };
    for (const chain of chains(begun ? [parting, ...pieces] : pieces)) {
      const fits = y + heightOf(chain) <= room(columns.length - 1) + 1e-6;
      if (!fits && chain.every(({ gap }) => gap)) continue;
      if (!fits && (y > 0 || isFree())) goOn();
      const begins = y === 0;
      const shown = begins ? chain.filter(({ gap }) => !gap) : chain;
      if (begins && columns.length > 1 && shown[0]?.head) put(shown[0].head, at);
      shown.forEach((piece) => put(piece, at));
    }
  });
  return columns;
}
