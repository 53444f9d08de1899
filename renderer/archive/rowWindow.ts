/** Height of a row of the list, CSS pixels; every row has it, so that places can be reckoned. */
export const rowPx = 31;
/** Rows beyond the edges that are made too, so that scrolling meets no gap. */
const beyond = 12;
/** Rows where the height of the window is not known. */
const atLeast = 40;

/** Rows of a long list that are made: from `first` up to, not including, `end`. */
export interface RowWindow {
  readonly first: number;
  readonly end: number;
}

/** Which of so many rows to make for a window of a height that was scrolled so far. */
export function rowWindow(total: number, scrolledPx: number, heightPx: number): RowWindow {
  const top = Math.floor(scrolledPx / rowPx);
  const seen = heightPx > 0 ? Math.ceil(heightPx / rowPx) : atLeast;
  const first = Math.max(0, Math.min(top - beyond, total - 1));
  return { first, end: Math.min(total, Math.max(top, 0) + seen + beyond) };
}

/** Where to scroll to so that a row is in sight under the heads; undefined where it is already. */
export function scrollFor(
  at: number,
  scrolledPx: number,
  heightPx: number,
  headPx: number,
): number | undefined {
  const top = at * rowPx;
  if (top < scrolledPx) return top;
  const lowest = top + rowPx + headPx - heightPx;
  return lowest > scrolledPx ? lowest : undefined;
}

/** Rows that the keys move by from a row; undefined for other keys. */
export function rowFor(
  key: string,
  at: number,
  total: number,
  heightPx: number,
): number | undefined {
  const page = Math.max(1, Math.floor(heightPx / rowPx) - 2);
  const goals: Record<string, number> = {
    ArrowUp: at - 1,
    ArrowDown: at + 1,
    PageUp: at - page,
    PageDown: at + page,
    Home: 0,
    End: total - 1,
  };
  const goal = goals[key];
  return goal === undefined ? undefined : Math.max(0, Math.min(total - 1, goal));
}
