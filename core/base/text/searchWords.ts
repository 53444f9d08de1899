/** Letters that people write as two where their keyboard lacks them. */
const pairs: readonly (readonly [letter: string, pair: string])[] = [
  ['œ', 'oe'],
  ['æ', 'ae'],
  ['ß', 'ss'],
];

/** A text as a search compares it: small letters without accents. */
export function plainText(text: string): string {
  const small = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return pairs.reduce((plain, [letter, pair]) => plain.replaceAll(letter, pair), small);
}

/** The words of a text as a search compares them; signs and blanks part them. */
export function searchWords(text: string): readonly string[] {
  return plainText(text).match(/[\p{L}\p{N}]+/gu) ?? [];
}
