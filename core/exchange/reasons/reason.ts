import type { Refusal } from '../../base/result.ts';
import type { Phrase } from '../../record/phrases/phrase.ts';
import type { english } from './english.ts';

export type ReasonCode = keyof typeof english;

/** All reasons of one language. */
export type ReasonTexts = Readonly<Record<ReasonCode, string>>;

/** What the record's own rules say, in their words. */
export interface OfRecord {
  readonly phrase: Phrase;
}

/** Why a file was refused as a whole. */
export interface OfRefusal {
  readonly refusal: Refusal;
}

/** What a reason names; a text stands as it is in every language. */
export type ReasonValues = Readonly<{
  [name: string]: string | number | Reason | OfRecord | OfRefusal;
}>;

/** Why something did not come in, as data that JSON can carry, so that any language can say it. */
export interface Reason {
  readonly code: ReasonCode;
  readonly values: ReasonValues;
}

export function reason(code: ReasonCode, values: ReasonValues = {}): Reason {
  return { code, values };
}
