/** What has its day in the life of a well. */
export const events = [
  'siteAgreed',
  'drillingStarted',
  'drillingFinished',
  'levelRead',
  'developmentStarted',
  'testStarted',
  'disinfected',
  'waterSampled',
  'headworksBuilt',
  'pumpSet',
  'signed',
] as const;

export type WellEvent = (typeof events)[number];

/** Where something lies from the well. */
export type SlopeWord = 'uphill' | 'level' | 'downhill' | 'slopeUnknown';

/** Values of rules of this area that are kinds: each has its word in every language. */
export type ServiceWord = WellEvent | SlopeWord;
