import { plainText, searchWords } from '../../core/base/text/searchWords.ts';
import type { Match } from '../../core/contract/listShape.ts';
import { materialsNamed } from '../../core/drawing/words/materialsNamed.ts';
import { searchText } from '../archive/words.ts';

/** Words before the one that was found, and from it on: a column shows the beginning. */
const before = 1;
const onwards = 8;

/** Words that were looked for and that texts which are shown do not begin a word with, plain. */
export function unseenWords(search: string, shown: readonly string[]): readonly string[] {
  const seen = shown.flatMap(searchWords);
  return searchWords(search).filter((word) => !seen.some((one) => one.startsWith(word)));
}

/** A line cut to a few words about the first one that begins as wanted. */
function excerpt(line: string, wanted: string): string | undefined {
  const words = line.split(/\s+/);
  const at = words.findIndex((word) => searchWords(word).some((one) => one.startsWith(wanted)));
  if (at < 0) return undefined;
  const [from, to] = [Math.max(0, at - before), at + onwards];
  const cut = words.slice(from, to).join(' ');
  return `${from > 0 ? '… ' : ''}${cut}${to < words.length ? ' …' : ''}`;
}

/** Where the list itself cannot show what was found, best first. */
const hidden = ['remarks', 'people', 'places', 'log', 'number'] as const;

/** The name by which one of some plain words speaks of a material among the lines of the log. */
function nameIn(log: string, words: readonly string[]): string | undefined {
  const lines = log.split('\n');
  const named = words.flatMap(materialsNamed);
  return named.find(({ material }) => lines.includes(material))?.name;
}

/** Where the first of some plain words stands that the list's own columns do not show. */
export function matchIn(document: unknown, words: readonly string[]): Match | undefined {
  const texts = searchText(document);
  for (const where of hidden) {
    const name = where === 'log' ? nameIn(texts.log, words) : undefined;
    if (name !== undefined) return { where, text: name };
    const column = plainText(texts[where]);
    const within = words.filter((word) => column.includes(word));
    if (within.length === 0) continue;
    for (const line of texts[where].split('\n')) {
      const text = within.map((word) => excerpt(line, word)).find((one) => one !== undefined);
      if (text !== undefined) return { where, text };
    }
  }
  return undefined;
}
