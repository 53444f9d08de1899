import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item } from '../../items.ts';
import type { Block } from '../block.ts';

/** A block that stands in a column under others, and goes on in the next where one is full. */
export interface Piece extends Block {
  /** Stands above it again where it begins a column. */
  readonly head?: Block;
  /** It does not end a column: the next piece stands under it. */
  readonly keeps?: boolean;
  /** It needs no room where it would begin a column. */
  readonly gap?: boolean;
}

interface Placed {
  readonly block: Block;
  readonly y: PaperMm;
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
function placed(pieces: readonly Piece[], room: (column: number) => PaperMm): Placed[][] {
  const columns: Placed[][] = [[]];
  let y = 0;
  const put = (block: Block) => {
    columns.at(-1)!.push({ block, y });
    y += block.height;
  };
  for (const chain of chains(pieces)) {
    if (y > 0 && y + heightOf(chain) > room(columns.length - 1) + 1e-6) {
      columns.push([]);
      y = 0;
    }
    const begins = y === 0;
    const shown = begins ? chain.filter(({ gap }) => !gap) : chain;
    if (begins && columns.length > 1 && shown[0]?.head) put(shown[0].head);
    shown.forEach(put);
  }
  return columns;
}

/** Shares of its height that the first column of the last page may be filled to. */
const leastShare = 0.3;
const shareStep = 0.02;

/** Height of each column, counted on over all pages. */
type Room = (column: number) => PaperMm;

/** How far the fullest of some columns is filled. */
function fullest(columns: readonly (readonly Placed[])[]): PaperMm {
  const ends = columns.map((blocks) => {
    const last = blocks.at(-1);
    return last ? last.y + last.block.height : 0;
  });
  return Math.max(...ends);
}

/** The first column of the last page only so full that all of its columns are filled alike. */
function evened(pieces: readonly Piece[], columns: number, room: Room): Room {
  const pagesOf = (filled: readonly Placed[][]) => Math.ceil(filled.length / columns);
  const pages = pagesOf(placed(pieces, room));
  const first = (pages - 1) * columns;
  let best = { room, height: Infinity };
  for (let share = leastShare; share <= 1; share += shareStep) {
    const lower: Room = (at) => room(at) * (at === first ? share : 1);
    const filled = placed(pieces, lower);
    const height = fullest(filled.slice(first));
    if (pagesOf(filled) === pages && height < best.height) best = { room: lower, height };
  }
  return best.room;
}

/** What a gap keeps of its height where a page is saved by it. */
const leastGap = 0.4;

function narrowed(piece: Piece): Piece {
  return piece.gap ? { ...piece, height: piece.height * leastGap } : piece;
}

function laid(pieces: readonly Piece[], columns: readonly Box[]): Item[][] {
  const boxOf = (at: number) => columns[at % columns.length]!;
  const room: Room = (at) => boxOf(at).height;
  const filled = placed(pieces, columns.length === 1 ? room : evened(pieces, columns.length, room));
  const pages = Math.ceil(filled.length / columns.length);
  return Array.from({ length: pages }, (_, page) =>
    filled
      .slice(page * columns.length, (page + 1) * columns.length)
      .flatMap((blocks, at) =>
        blocks.flatMap(({ block, y }) => block.draw(boxOf(at).x, boxOf(at).y + y)),
      ),
  );
}

/**
 * Pieces from the first column on, page by page; every page has the same columns. Gaps are narrowed
 * where that saves a page. Gives the items of each page.
 */
export function flowed(pieces: readonly Piece[], columns: readonly Box[]): Item[][] {
  const wide = laid(pieces, columns);
  const close = laid(pieces.map(narrowed), columns);
  return close.length < wide.length ? close : wide;
}
