import { longestTerm, meaningOf, plainWords, type Meaning } from './lexicon.ts';

/** A word or a mark of a description. `other` is a word that the tables do not have. */
export type Part = (Meaning | { readonly kind: 'other' | 'comma' | 'stroke' | 'query' }) & {
  /** Written in capitals within a text that is not: the principal material, by BS 5930. */
  readonly capitals: boolean;
};

const marks: Readonly<Record<string, 'comma' | 'stroke' | 'query'>> = {
  '/': 'stroke',
  '?': 'query',
};

const isWord = (token: string) => /[\p{L}\p{N}]/u.test(token);
const isCapital = (token: string) => token.length > 2 && /^\p{Lu}+$/u.test(token);

/** The longest term that begins at a token; a sign between words ends it. */
function termAt(tokens: readonly string[], at: number) {
  for (let length = Math.min(longestTerm, tokens.length - at); length > 0; length--) {
    const words = tokens.slice(at, at + length);
    if (!words.every(isWord)) continue;
    const meaning = meaningOf(plainWords(words.join(' ')));
    if (meaning) return { meaning, words };
  }
  return undefined;
}

function markOf(token: string): Part {
  return { kind: marks[token] ?? (token === '&' ? 'and' : 'comma'), capitals: false };
}

/** A sentence as a row of what its words mean. What stands in parentheses is passed over. */
export function partsOf(sentence: string): Part[] {
  const plain = sentence.replace(/\([^)]*\)?/g, ' ');
  const tokens = plain.match(/[\p{L}\p{M}\p{N}]+|[,;:&/?+]|(?<=\s)-(?=\s)/gu) ?? [];
  const mixed = /\p{Ll}/u.test(plain);
  const parts: Part[] = [];
  for (let at = 0; at < tokens.length;) {
    const term = termAt(tokens, at);
    if (term) parts.push({ ...term.meaning, capitals: mixed && term.words.every(isCapital) });
    else if (isWord(tokens[at]!)) parts.push({ kind: 'other', capitals: false });
    else parts.push(markOf(tokens[at]!));
    at += term?.words.length ?? 1;
  }
  return parts;
}
