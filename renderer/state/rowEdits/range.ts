/** Rows next to each other, both ends among them. */
export interface RowRange {
  readonly first: number;
  readonly last: number;
}

/** The rows between two, whichever stands above. */
export function rangeOf(a: number, b: number): RowRange {
  return { first: Math.min(a, b), last: Math.max(a, b) };
}

/** The part of a range that is rows of the record, without the row that waits; or undefined. */
export function within(range: RowRange, count: number): RowRange | undefined {
  const last = Math.min(range.last, count - 1);
  return range.first > last ? undefined : { first: range.first, last };
}

export function sizeOf({ first, last }: RowRange): number {
  return last - first + 1;
}
