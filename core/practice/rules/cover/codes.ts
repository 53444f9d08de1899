/** Rules on what stands between the hole's wall and the casing: the values that a sentence names. */
export const coverCodes = {
  'pack.bare': ['fill'],
} as const satisfies Record<string, readonly string[]>;
