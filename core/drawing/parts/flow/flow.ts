import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item } from '../../items.ts';
import type { Block } from '../block.ts';
import type { Part, Piece } from './part.ts';
import { placed, type Placed, type Room } from './place.ts';

export type { Part, Piece } from './part.ts';

/** Where parts flow. */
export interface Paths {
  /** Columns of every page. */
  readonly columns: readonly Box[];
  /** Room left free on a page before: the first page that is given back. */
  readonly free?: Box | undefined;
  /** Stands between two parts on one page. */
  readonly between: Block;
}

/** What stands on a page, by the part that it belongs to. */
export interface FlowedPage<Name extends string = string> {
  readonly parts: readonly { readonly name: Name; readonly items: readonly Item[] }[];
}

/** Parts that were placed in some manner. */
interface Layout {
  /** How they were set: looser ones first. */
  readonly manner: readonly Part[];
  /** Which parts begin a page. */
  readonly fresh: readonly boolean[];
  readonly columns: readonly (readonly Placed[])[];
}

/** Counts columns of the free room and of pages. */
interface Counting {
  readonly perPage: number;
  /** Columns before those of the first whole page. */
  readonly before: 0 | 1;
}

const countingOf = ({ columns, free }: Paths): Counting => ({
  perPage: columns.length,
  before: free ? 1 : 0,
});

/** Page of a column; the free room is page 0 where there is one. */
function pageOf({ perPage, before }: Counting, column: number): number {
  return column < before ? 0 : before + Math.floor((column - before) / perPage);
}

function boxAt({ columns, free }: Paths, column: number): Box {
  if (!free) return columns[column % columns.length]!;
  return column === 0 ? free : columns[(column - 1) % columns.length]!;
}

const pagesOf = (counting: Counting, { columns }: Layout) =>
  pageOf(counting, columns.length - 1) + 1;

const endOf = (blocks: readonly Placed[]) => {
  const last = blocks.at(-1);
  return last ? last.y + last.block.height : 0;
};

function lay(manner: readonly Part[], fresh: readonly boolean[], paths: Paths, room: Room): Layout {
  const counting = countingOf(paths);
  const columns = placed(manner, {
    fresh,
    room,
    between: paths.between,
    freeFirst: paths.free !== undefined,
    pageStart: (column) =>
      column < counting.before || (column - counting.before) % counting.perPage === 0,
  });
  return { manner, fresh, columns };
}

/** A page that is not the last and is filled less looks left over. */
const thinShare = 0.5;

/** Pages before the last, but for the free room, that are filled little. */
function thinPages(paths: Paths, layout: Layout): number {
  const counting = countingOf(paths);
  const pages = pagesOf(counting, layout);
  const filled = Array.from({ length: pages }, (_, page) => {
    const own = layout.columns.flatMap((blocks, at) =>
      pageOf(counting, at) === page ? [endOf(blocks) / boxAt(paths, at).height] : [],
    );
    return own.reduce((sum, share) => sum + share, 0) / (page < counting.before ? 1 : own.length);
  });
  return filled.slice(counting.before, -1).filter((share) => share < thinShare).length;
}

/** Every choice of parts that begin a page; the first begins one anyhow. More of them come first. */
function freshChoices(count: number): boolean[][] {
  const choices = Array.from({ length: 2 ** Math.max(0, count - 1) }, (_, bits) =>
    Array.from({ length: count }, (__, at) => at > 0 && ((bits >> (at - 1)) & 1) === 1),
  );
  const freshOf = (choice: readonly boolean[]) => choice.filter(Boolean).length;
  return choices.toSorted((a, b) => freshOf(b) - freshOf(a));
}

/** What a gap keeps of its height where a page is saved by it. */
const leastGap = 0.4;

function narrowed(part: Part): Part {
  const pieces = part.pieces.map((piece) =>
    piece.gap ? { ...piece, height: piece.height * leastGap } : piece,
  );
  return { ...part, pieces };
}

/**
 * The layout with the fewest pages, then the fewest that are filled little; then the loosest, then
 * the one in which most parts begin a page of their own.
 */
function best(manners: readonly (readonly Part[])[], paths: Paths): Layout {
  const room: Room = (column) => boxAt(paths, column).height;
  const counting = countingOf(paths);
  const layouts = manners
    .flatMap((manner) => [manner, manner.map(narrowed)])
    .flatMap((manner) =>
      freshChoices(manner.length).map((fresh) => lay(manner, fresh, paths, room)),
    );
  const costs = layouts.map((one) => pagesOf(counting, one) * 100 + thinPages(paths, one));
  return layouts[costs.indexOf(Math.min(...costs))]!;
}

/** Shares of its height that the first column of the last page may be filled to. */
const leastShare = 0.3;
const shareStep = 0.02;

/** The first column of the last page only so full that all of its columns are filled alike. */
function evened(layout: Layout, paths: Paths): Layout {
  const counting = countingOf(paths);
  const pages = pagesOf(counting, layout);
  const first = counting.before + (pages - 1 - counting.before) * counting.perPage;
  if (counting.perPage === 1 || first < counting.before) return layout;
  let chosen = { layout, height: Infinity };
  for (let share = leastShare; share <= 1; share += shareStep) {
    const lower: Room = (at) => boxAt(paths, at).height * (at === first ? share : 1);
    const tried = lay(layout.manner, layout.fresh, paths, lower);
    const height = Math.max(...tried.columns.slice(first).map(endOf));
    if (pagesOf(counting, tried) === pages && height < chosen.height)
      chosen = { layout: tried, height };
  }
  return chosen.layout;
}

/** The items of the parts that stand on a page. */
function drawn<Name extends string>(layout: Layout, paths: Paths, page: number): FlowedPage<Name> {
  const counting = countingOf(paths);
  const parts = layout.manner.flatMap(({ name }, part) => {
    const items = layout.columns.flatMap((blocks, at) => {
      if (pageOf(counting, at) !== page) return [];
      const box = boxAt(paths, at);
      const own = blocks.filter((one) => one.part === part);
      return own.flatMap(({ block, y }) => block.draw(box.x, box.y + y));
    });
    return items.length === 0 ? [] : [{ name: name as Name, items }];
  });
  return { parts };
}

/**
 * Parts from the free room or the first column on, page by page. `manners` are the same parts set
 * loosely first and closer after it; a closer one is taken, gaps are narrowed and parts share a page
 * where that saves one, or fills one that is not the last.
 */
export function flowedParts<Name extends string>(
  manners: readonly (readonly Part<Name>[])[],
  paths: Paths,
): FlowedPage<Name>[] {
  if (manners[0]!.every(({ pieces }) => pieces.length === 0)) return [];
  const layout = evened(best(manners, paths), paths);
  const pages = pagesOf(countingOf(paths), layout);
  return Array.from({ length: pages }, (_, page) => drawn(layout, paths, page));
}

/** Pieces of one part over whole pages: the items of each. */
export function flowed(pieces: readonly Piece[], columns: readonly Box[]): Item[][] {
  const between: Block = { height: 0, draw: () => [] };
  const pages = flowedParts([[{ name: '', pieces }]], { columns, between });
  return pages.map(({ parts }) => parts.flatMap(({ items }) => items));
}

/** Height of what must stand together at the beginning of a part. */
export function beginning({ pieces }: Part): PaperMm {
  const end = pieces.findIndex(({ keeps }) => !keeps);
  return pieces.slice(0, end + 1).reduce((sum, { height }) => sum + height, 0);
}
