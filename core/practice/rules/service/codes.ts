/** Rules on the site, the work and the handover: the values that a sentence names. */
export const serviceCodes = {
  'dates.order': ['earlier', 'earlierOn', 'later', 'laterOn'],
  'samples.sparse': ['bareM', 'eachM'],
  'pad.thin': ['built', 'least'],
  'pad.small': ['built', 'least'],
  'drain.short': ['built', 'least'],
  'drain.flat': ['built', 'least'],
} as const satisfies Record<string, readonly string[]>;
