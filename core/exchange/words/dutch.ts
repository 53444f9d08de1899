import type { WordGroup } from './wordTable.ts';

export const dutch: readonly WordGroup[] = [
  {
    source:
      'words of tests/data/dov-flanders; names of soils as in NEN-EN-ISO 14688-1, from memory',
    nouns: {
      clay: ['klei'],
      silt: ['leem'],
      sand: ['zand', 'kwartszand'],
      gravel: ['grind'],
      peat: ['veen'],
    },
    adjectives: {
      clay: ['kleiig', 'kleiige'],
      sand: ['zandig', 'zandige'],
      peat: ['venig', 'venige'],
    },
  },
];
