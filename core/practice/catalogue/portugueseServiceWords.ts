import type { ServiceWord } from '../rules/service/words.ts';

/** Events of a well, what stands round it, items of its handover. */
export const portugueseServiceWords: Readonly<Record<ServiceWord, string>> = {
  siteAgreed: 'o acordo sobre o local',
  drillingStarted: 'o início da perfuração',
  drillingFinished: 'o fim da perfuração',
  levelRead: 'a leitura de um nível',
  developmentStarted: 'o início do desenvolvimento',
  testStarted: 'o início de um ensaio de bombagem',
  disinfected: 'a desinfeção',
  waterSampled: 'a colheita de uma amostra de água',
  headworksBuilt: 'a construção das obras de superfície',
  pumpSet: 'a colocação da bomba',
  signed: 'a assinatura',
  uphill: 'a montante',
  level: 'ao mesmo nível',
  downhill: 'a jusante',
  slopeUnknown: 'montante ou jusante não registado',
};
