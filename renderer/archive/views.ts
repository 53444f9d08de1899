/** What the archive's page can show under its head, in the order of its buttons. */
export const views = ['wells', 'binders', 'import', 'templates', 'copies', 'bin'] as const;

export type View = (typeof views)[number];
