/** How closely what flows over pages is set, the loosest first; closer where that saves a page. */
export const closenesses = [0, 1, 2] as const;
export type Closeness = (typeof closenesses)[number];
