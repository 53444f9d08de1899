/** Rules on the site, the work and the handover: the values that a sentence names. */
export const serviceCodes = {
  'dates.order': ['earlier', 'earlierOn', 'later', 'laterOn'],
  'samples.sparse': ['bareM', 'eachM'],
  'pad.thin': ['built', 'least'],
  'pad.small': ['built', 'least'],
  'drain.short': ['built', 'least'],
  'drain.flat': ['built', 'least'],
  'near.latrine': ['distance', 'limit', 'slope'],
  'near.septicTank': ['distance', 'limit', 'slope'],
  'near.soakaway': ['distance', 'limit', 'slope'],
  'near.livestock': ['distance', 'limit', 'slope'],
  'near.graveyard': ['distance', 'limit', 'slope'],
  'near.wasteDump': ['distance', 'limit', 'slope'],
  'near.fuel': ['distance', 'limit', 'slope'],
  'near.openWater': ['distance', 'limit', 'slope'],
  'near.building': ['distance', 'limit', 'slope'],
  'pit.nearWater': ['baseM', 'restM', 'limitM'],
} as const satisfies Record<string, readonly string[]>;
