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

/** Pieces that belong together, such as all that is said of pumping tests. */
export interface Part<Name extends string = string> {
  readonly name: Name;
  readonly pieces: readonly Piece[];
  /** It may begin in room that is left free on a page before. */
  readonly fills?: boolean;
}
