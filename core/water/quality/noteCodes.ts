/** Remarks on samples: the values that a sentence names. */
export const noteCodes = {
  'sample.undated': [],
  'sample.late': ['hours', 'mostHours'],
  'sample.aging': ['hours', 'goodHours'],
  'sample.ageUnknown': ['mostHours'],
  'sample.measuredInLaboratory': [],
  'sample.receivedBefore': [],
} as const satisfies Record<string, readonly string[]>;
export type NoteCode = keyof typeof noteCodes;
