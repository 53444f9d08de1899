import { readSheetText } from '../state/rowEdits/sheetText.ts';

/** What a key asks of a table: another cell, or a deed on the rows that are marked. */
export type Wish =
  | { readonly kind: 'go'; readonly row: number; readonly column: number }
  | { readonly kind: 'mark'; readonly row: number; readonly column: number }
  | { readonly kind: Deed };

/** What can be done with rows, by a key or by a button. */
export type Deed =
  'more' | 'insert' | 'duplicate' | 'split' | 'join' | 'fillDown' | 'up' | 'down' | 'remove';

/** A cell, and the table that it stands in; the row that waits is among its rows. */
export interface Standing {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
  /** Columns at which Enter stops, in their order. */
  readonly route: readonly number[];
  /** Nothing was typed in the row that waits, and the hand is where it would begin. */
  readonly blank: boolean;
}

export interface Key {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** The keys of the deeds, as they are pressed and as titles and documents name them. */
export const deedKeys: Readonly<Record<Deed, string>> = {
  more: 'Ctrl+Enter',
  insert: 'Insert',
  duplicate: 'Ctrl+Shift+D',
  split: 'Alt+S',
  join: 'Alt+J',
  fillDown: 'Ctrl+D',
  up: 'Alt+ArrowUp',
  down: 'Alt+ArrowDown',
  remove: 'Ctrl+Delete',
};

const deedOf = new Map(Object.entries(deedKeys).map(([deed, key]) => [key, deed as Deed]));

/** A key with what is held, as `Ctrl+Shift+D`; the command key stands for Ctrl. */
export function nameOf({ key, shiftKey, altKey, ctrlKey, metaKey }: Key): string {
  const held = [
    ctrlKey || metaKey ? 'Ctrl' : '',
    altKey ? 'Alt' : '',
    shiftKey ? 'Shift' : '',
    key.length === 1 ? key.toUpperCase() : key,
  ];
  return held.filter((part) => part !== '').join('+');
}

function onwards({ row, column, rows, route }: Standing): Wish | undefined {
  const next = route.find((other) => other > column);
  if (next !== undefined) return { kind: 'go', row, column: next };
  return row + 1 < rows ? { kind: 'go', row: row + 1, column: route[0] ?? 0 } : undefined;
}

function back({ row, column, route }: Standing): Wish | undefined {
  const before = route.findLast((other) => other < column);
  if (before !== undefined) return { kind: 'go', row, column: before };
  return row > 0 ? { kind: 'go', row: row - 1, column: route.at(-1) ?? 0 } : undefined;
}

function step({ row, column, rows }: Standing, by: 1 | -1, kind: 'go' | 'mark'): Wish | undefined {
  const next = row + by;
  return next < 0 || next >= rows ? undefined : { kind, row: next, column };
}

/**
 * What a key asks for where the hand stands; undefined where the table has nothing to do with it.
 * Enter goes on and Shift+Enter back; on a row that waits with nothing typed in it Enter is left
 * to lead out of the table. Arrows go up and down, with Shift they mark rows.
 */
export function wishOf(key: Key, at: Standing): Wish | undefined {
  const name = nameOf(key);
  if (name === 'Enter') return at.blank ? undefined : onwards(at);
  if (name === 'Shift+Enter') return back(at);
  const by = { ArrowUp: -1, ArrowDown: 1 }[key.key] as 1 | -1 | undefined;
  if (by && name === key.key) return step(at, by, 'go');
  if (by && name === `Shift+${key.key}`) return step(at, by, 'mark');
  const deed = deedOf.get(name);
  return deed && { kind: deed };
}

/** A block copied from a spreadsheet, or undefined where a single text was copied. */
export function blockOf(text: string): string[][] | undefined {
  const block = readSheetText(text);
  return block.length > 1 || (block[0]?.length ?? 0) > 1 ? block : undefined;
}
