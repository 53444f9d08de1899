import type { ServiceWord } from '../rules/service/words.ts';

/** Events of a well, what stands round it, items of its handover. */
export const frenchServiceWords: Readonly<Record<ServiceWord, string>> = {
  siteAgreed: 'l’accord sur le site',
  drillingStarted: 'le début de la foration',
  drillingFinished: 'la fin de la foration',
  levelRead: 'la lecture d’un niveau',
  developmentStarted: 'le début du développement',
  testStarted: 'le début d’un essai de pompage',
  disinfected: 'la désinfection',
  waterSampled: 'le prélèvement d’un échantillon d’eau',
  headworksBuilt: 'la construction des aménagements de surface',
  pumpSet: 'la pose de la pompe',
  signed: 'la signature',
  uphill: 'en amont',
  level: 'au même niveau',
  downhill: 'en aval',
  slopeUnknown: 'amont ou aval non relevé',
};
