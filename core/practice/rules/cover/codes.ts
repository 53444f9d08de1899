/** Rules on what stands between the hole's wall and the casing: the values that a sentence names. */
export const coverCodes = {
  'pack.bare': ['fill'],
  'pack.low': ['aboveM', 'screenM', 'wantedM', 'graveM'],
  'clay.thin': ['lengthM', 'packM', 'wantedM', 'graveM'],
  'seal.none': ['fill', 'wantedM'],
  'seal.short': ['startM', 'wantedM'],
  'open.above': [],
  'aquifers.joined': ['fill', 'thicknessM', 'limitM'],
  'aquifers.screened': ['string', 'thicknessM', 'limitM'],
  'gap.narrow': ['gapMm', 'holeMm', 'pipeMm', 'wantedMm', 'graveMm'],
  'poured.little': ['fill', 'poured', 'computed', 'percent', 'limitPercent'],
  'poured.much': ['fill', 'poured', 'computed', 'percent', 'limitPercent'],
} as const satisfies Record<string, readonly string[]>;
