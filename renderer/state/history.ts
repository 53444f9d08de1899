/** Values one upon the other, the last on top. Histories share them, so that a step costs little. */
interface Stack<T> {
  readonly top: T;
  readonly below: Stack<T> | undefined;
}

/** What was, is, and would be again: the steps of undo over values that never change. */
export interface History<T> {
  readonly past: Stack<T> | undefined;
  readonly present: T;
  readonly future: Stack<T> | undefined;
  /** While set, the next step with the same key replaces the present instead of following it. */
  readonly merging?: string;
}

export function begin<T>(present: T): History<T> {
  return { past: undefined, present, future: undefined };
}

/** Whether the next step with this key goes on with the last one. */
export function joins<T>({ merging }: History<T>, key: string | undefined): boolean {
  return key !== undefined && key === merging;
}

/** Another present in place of this one, without a step. */
export function amend<T>({ past }: History<T>, present: T): History<T> {
  return { past, present, future: undefined };
}

/**
 * A step forward. Steps with the same key in a row count as one, so that undo takes back a word
 * and not a letter.
 */
export function push<T>(history: History<T>, present: T, key?: string): History<T> {
  if (present === history.present) return history;
  const past = { top: history.present, below: history.past };
  const next = amend(joins(history, key) ? history : { ...history, past }, present);
  return key === undefined ? next : { ...next, merging: key };
}

/** Ends merging: what comes next is a step of its own. */
export function settle<T>({ past, present, future }: History<T>): History<T> {
  return { past, present, future };
}

export function undo<T>(history: History<T>): History<T> {
  const { past, present, future } = history;
  if (!past) return history;
  return { past: past.below, present: past.top, future: { top: present, below: future } };
}

export function redo<T>(history: History<T>): History<T> {
  const { past, present, future } = history;
  if (!future) return history;
  return { past: { top: present, below: past }, present: future.top, future: future.below };
}
