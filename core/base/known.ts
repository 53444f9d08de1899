/**
 * An object with only those keys whose values are known: an absent value is an absent key, never
 * a key that holds undefined.
 */
export function known<T extends object>(values: T): { [K in keyof T]?: NonNullable<T[K]> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: NonNullable<T[K]>;
  };
}
