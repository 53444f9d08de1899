/** What was, is, and would be again: the steps of undo over values that never change. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** While set, the next step with the same key replaces the present instead of following it. */
  readonly merging?: string;
}

/** Steps that are kept; older ones are forgotten. */
const kept = 500;

export function begin<T>(present: T): History<T> {
  return { past: [], present, future: [] };
}

/**
 * A step forward. Steps with the same key in a row count as one, so that undo takes back a word
 * and not a letter.
 */
export function push<T>(history: History<T>, present: T, key?: string): History<T> {
  if (present === history.present) return history;
  const joins = key !== undefined && key === history.merging;
  const past = joins ? history.past : [...history.past, history.present].slice(-kept);
  const next = { past, present, future: [] };
  return key === undefined ? next : { ...next, merging: key };
}

/** Ends merging: what comes next is a step of its own. */
export function settle<T>({ past, present, future }: History<T>): History<T> {
  return { past, present, future };
}

export function undo<T>(history: History<T>): History<T> {
  const present = history.past.at(-1);
  if (present === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present,
    future: [history.present, ...history.future],
  };
}

export function redo<T>(history: History<T>): History<T> {
  const [present, ...future] = history.future;
  if (present === undefined) return history;
  return { past: [...history.past, history.present], present, future };
}
