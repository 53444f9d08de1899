/** What the archive's page can show under its head, in the order of its buttons. */
export const views = ['wells', 'bin'] as const;

export type View = (typeof views)[number];
