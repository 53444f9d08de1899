/** Every field of a value, at every depth, can only be read. */
export type DeepReadonly<T> = T extends readonly (infer E)[]
  ? readonly DeepReadonly<E>[]
  : T extends object
    ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
    : T;

/**
 * Freezes a JSON value and all that it holds, and gives it back. Works through a list of its own
 * rather than by calling itself, so that no depth of nesting can exhaust the stack.
 */
export function deepFreeze<T>(value: T): T {
  const waiting: unknown[] = [value];
  while (waiting.length > 0) {
    const next = waiting.pop();
    if (typeof next !== 'object' || next === null || Object.isFrozen(next)) continue;
    Object.freeze(next);
    waiting.push(...Object.values(next));
  }
  return value;
}
