/** Rules on results of samples, the kind of pump and the rate: the values that a sentence names. */
export const waterCodes = {
  'quality.aboveHealth': ['parameter', 'reading', 'allowed', 'unit'],
  'quality.untested': ['parameter'],
  'suits.lift': ['liftM', 'mostM'],
  'suits.casing': ['insideMm', 'leastMm'],
  'suits.flow': ['hours'],
  'rate.untested': ['rate', 'tested'],
} as const satisfies Record<string, readonly string[]>;
