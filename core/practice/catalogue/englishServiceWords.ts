import type { ServiceWord } from '../rules/service/words.ts';

/** Events of a well, what stands round it, items of its handover. */
export const englishServiceWords: Readonly<Record<ServiceWord, string>> = {
  siteAgreed: 'the agreement to the site',
  drillingStarted: 'the start of drilling',
  drillingFinished: 'the end of drilling',
  levelRead: 'the reading of a level',
  developmentStarted: 'the start of development',
  testStarted: 'the start of a pumping test',
  disinfected: 'the disinfection',
  waterSampled: 'the taking of a water sample',
  headworksBuilt: 'the building of the headworks',
  pumpSet: 'the setting of the pump',
  signed: 'the signature',
  uphill: 'uphill of it',
  level: 'on a level with it',
  downhill: 'downhill of it',
  slopeUnknown: 'uphill or downhill not recorded',
};
