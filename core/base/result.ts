/** The outcome of something the user may have to act on; defects are thrown instead. */
export type Result<T, E = Refusal> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

/** Why something was not done: a code for programs, a sentence for people. */
export interface Refusal {
  readonly code: string;
  /** Says where the trouble is and what to do. */
  readonly sentence: string;
  /** Places in the file that was given, as its keys name them, in the sentence's order. */
  readonly at?: readonly string[];
}

export function ok<T>(value: T): Result<T, never> {
  return { ok: true, value };
}

export function refused(code: string, sentence: string, at: readonly string[] = []): Result<never> {
  return { ok: false, error: { code, sentence, ...(at.length > 0 && { at }) } };
}
