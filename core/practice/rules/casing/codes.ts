/** Rules on pipes and screens: the values that a sentence names. */
export const casingCodes = {} as const satisfies Record<string, readonly string[]>;
