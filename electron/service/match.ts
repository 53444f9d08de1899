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

/** Words that were looked for and that texts which are shown do not begin a word with, plain. */
export function unseenWords(search: string, shown: readonly string[]): readonly string[] {
  const seen = shown.flatMap(wordsOf).map(plain);
  return wordsOf(search)
    .map(plain)
    .filter((word) => !seen.some((one) => one.startsWith(word)));
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

/** Where the first of some plain words stands that the list's own columns do not show. */
export function matchIn(document: unknown, words: readonly string[]): Match | undefined {
  const texts = searchText(document);
  for (const where of hidden) {
    const column = plain(texts[where]);
    const within = words.filter((word) => column.includes(word));
    if (within.length === 0) continue;
    for (const line of texts[where].split('\n')) {
      const text = within.map((word) => excerpt(line, word)).find((one) => one !== undefined);
      if (text !== undefined) return { where, text };
    }
  }
  return undefined;
}
