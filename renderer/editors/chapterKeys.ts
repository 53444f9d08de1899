import type { Key } from './tableKeys.ts';
import { nameOf } from './tableKeys.ts';

/**
 * Keys that lead through the well folder. Ctrl with Page Up or Down, the usual ones, are the
 * browser's own for its tabs and never reach a page in one; Alt with them does.
 */
export type Way =
  | { readonly kind: 'block'; readonly by: 1 | -1 }
  | { readonly kind: 'chapter'; readonly by: 1 | -1 }
  | { readonly kind: 'open'; readonly at: number };

const ways: Readonly<Record<string, Way>> = {
  Enter: { kind: 'block', by: 1 },
  'Shift+Enter': { kind: 'block', by: -1 },
  'Ctrl+ArrowDown': { kind: 'block', by: 1 },
  'Ctrl+ArrowUp': { kind: 'block', by: -1 },
  'Alt+PageDown': { kind: 'chapter', by: 1 },
  'Alt+PageUp': { kind: 'chapter', by: -1 },
};

/** Where a key leads; digits by where they lie on the board, since some boards shift them. */
export function wayOf(key: Key & { readonly code: string }): Way | undefined {
  const digit = /^Digit([1-9])$/.exec(key.code)?.[1];
  if (digit !== undefined && key.altKey && !key.ctrlKey && !key.shiftKey && !key.metaKey)
    return { kind: 'open', at: Number(digit) - 1 };
  return ways[nameOf(key)];
}
