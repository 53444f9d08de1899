import type { SignatureState } from '../issued/issuedPaper.ts';

/** Words of the list of issued papers; `{…}` are filled in. */
export interface IssuedWords {
  readonly heads: Readonly<
    Record<'number' | 'name' | 'paper' | 'revision' | 'day' | 'signers' | 'hash' | 'page', string>
  >;
  /** Revision `{n}` of a well that has `{newest}` by now. */
  readonly newer: string;
  readonly unsigned: string;
  readonly noName: string;
  readonly states: Readonly<Record<Exclude<SignatureState, 'holds'>, string>>;
  /** `{folder}`. */
  readonly beside: string;
  readonly notBound: string;
  readonly hashSays: string;
  readonly sealSays: string;
}
