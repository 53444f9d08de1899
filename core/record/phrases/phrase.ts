import type { english } from './english.ts';

export type PhraseCode = keyof typeof english;

/** All phrases of one language. */
export type PhraseTexts = Readonly<Record<PhraseCode, string>>;

/** What a phrase names: words and numbers as they stand, or phrases that have their own words. */
export type PhraseValues = Readonly<{ [name: string]: string | number | Phrase }>;

/** Something to be said, as data that JSON can carry, so that any language can say it. */
export interface Phrase {
  readonly code: PhraseCode;
  readonly values: PhraseValues;
}

export function phrase(code: PhraseCode, values: PhraseValues = {}): Phrase {
  return { code, values };
}
