/** Parts of a binder beside the papers of its wells, in their order; the last stands at its end. */
export const partIds = [
  'cover',
  'contents',
  'reading',
  'byVillage',
  'byNumber',
  'byYear',
  'map',
  'tables',
  'plots',
  'sections',
  'issued',
  'colophon',
] as const;
export type PartId = (typeof partIds)[number];

/** What stands behind the papers of the wells. */
export const backMatter: readonly PartId[] = ['colophon'];
