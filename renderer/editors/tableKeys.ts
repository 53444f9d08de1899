/** What a key asks of a table: a cell, another place for the row, its end, or the rest of it. */
export type Wish =
  | { readonly kind: 'go'; readonly row: number; readonly column: number }
  | { readonly kind: 'move'; readonly by: -1 | 1 }
  | { readonly kind: 'remove' }
  | { readonly kind: 'more' };

/** A cell, and the size of the table that it stands in; the last row waits to be filled. */
export interface Standing {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
}

function goOn({ row, column, rows, columns }: Standing, by: 1 | -1): Wish | undefined {
  const at = row * columns + column + by;
  if (at < 0 || at >= rows * columns) return undefined;
  return { kind: 'go', row: Math.floor(at / columns), column: at % columns };
}

function step(at: Standing, by: 1 | -1): Wish | undefined {
  const row = at.row + by;
  return row < 0 || row >= at.rows ? undefined : { kind: 'go', row, column: at.column };
}

/**
 * Enter goes on and Shift+Enter back, through rows; arrows go up and down unless the control
 * needs them itself; Alt with an arrow moves the row; Ctrl+Delete takes it away; Ctrl+Enter goes
 * to the rest of the row.
 */
export function wishOf(key: Key, at: Standing, ownArrows: boolean): Wish | undefined {
  if (key.key === 'Enter' && key.ctrlKey) return { kind: 'more' };
  if (key.key === 'Enter') return goOn(at, key.shiftKey ? -1 : 1);
  if (key.key === 'Delete' && key.ctrlKey) return { kind: 'remove' };
  const by = key.key === 'ArrowUp' ? -1 : key.key === 'ArrowDown' ? 1 : undefined;
  if (by === undefined) return undefined;
  if (key.altKey) return { kind: 'move', by };
  return ownArrows ? undefined : step(at, by);
}

/** A block copied from a spreadsheet, or undefined where a single text was copied. */
export function blockOf(text: string): string[][] | undefined {
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n$/, '').split('\n');
  const block = lines.map((line) => line.split('\t'));
  return block.length > 1 || (block[0]?.length ?? 0) > 1 ? block : undefined;
}
