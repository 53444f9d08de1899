import type { Match } from '../../core/contract/listShape.ts';
import { searchText } from '../archive/words.ts';

/** Words before the one that was found, and from it on: a column shows the beginning. */
const before = 1;
const onwards = 8;

const wordsOf = (text: string) => text.match(/[\p{L}\p{N}\p{M}]+/gu) ?? [];

/** A word as the search compares it: without accents and capitals. */
function plain(word: string): string {
  return word.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
}

/** A line cut to a few words about the first one that begins as wanted. */
function excerpt(line: string, wanted: string): string | undefined {
  const words = line.split(/\s+/);
  const at = words.findIndex((word) => wordsOf(word).some((one) => plain(one).startsWith(wanted)));
  if (at < 0) return undefined;
  const [from, to] = [Math.max(0, at - before), at + onwards];
  const cut = words.slice(from, to).join(' ');
  return `${from > 0 ? '… ' : ''}${cut}${to < words.length ? ' …' : ''}`;
}

/** Where the list itself cannot show what was found, best first. */
const hidden = ['remarks', 'people', 'places', 'log', 'number'] as const;

/**
 * Where the first word stands that was looked for and that the list's own columns do not show;
 * undefined where they show all.
 */
export function matchIn(
  document: unknown,
  search: string,
  shown: readonly string[],
): Match | undefined {
  const seen = shown.flatMap(wordsOf).map(plain);
  const wanted = wordsOf(search)
    .map(plain)
    .filter((word) => !seen.some((one) => one.startsWith(word)));
  if (wanted.length === 0) return undefined;
  const texts = searchText(document);
  for (const where of hidden)
    for (const line of texts[where].split('\n')) {
      const text = wanted.map((word) => excerpt(line, word)).find((one) => one !== undefined);
      if (text !== undefined) return { where, text };
    }
  return undefined;
}
