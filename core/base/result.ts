/** The outcome of something the user may have to act on; defects are thrown instead. */
export type Result<T, E = Refusal> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

/** Why something was not done: a code for programs, a sentence for people. */
export interface Refusal {
  readonly code: string;
  /** Says where the trouble is and what to do. */
  readonly sentence: string;
}

export function ok<T>(value: T): Result<T, never> {
  return { ok: true, value };
}

export function refused(code: string, sentence: string): Result<never> {
  return { ok: false, error: { code, sentence } };
}
