/**
 * An object with only those keys whose values are known: an absent value is an absent key, never
 * a key that holds undefined.
 */
export function known<T extends object>(values: T): { [K in keyof T]?: NonNullable<T[K]> } {
  const found: { [K in keyof T]?: NonNullable<T[K]> } = {};
  for (const key of Object.keys(values) as (keyof T)[]) {
    const value = values[key];
    if (value !== undefined) found[key] = value as NonNullable<T[keyof T]>;
  }
  return found;
}
