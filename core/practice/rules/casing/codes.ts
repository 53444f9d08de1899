/** Rules on pipes and screens: the values that a sentence names. */
export const casingCodes = {
  'sump.length': ['string', 'sumpM', 'leastM', 'mostM'],
  'foot.open': ['string'],
  'screened.ground': ['string', 'tightM', 'screenM'],
  'screened.dry': ['string', 'levelM', 'limitM'],
  'screened.pumping': ['string', 'levelM', 'limitM'],
  'grain.pack': ['string', 'pack', 'ground', 'ratio', 'least', 'most'],
  'slot.pack': ['string', 'slot', 'limit', 'finest', 'coarsest', 'keeps'],
  'slot.ground': ['string', 'slot', 'limit', 'keeps'],
  'screened.openArea': ['string', 'percent', 'least'],
  'screened.velocity': ['rate', 'screenM', 'speed', 'most'],
} as const satisfies Record<string, readonly string[]>;
