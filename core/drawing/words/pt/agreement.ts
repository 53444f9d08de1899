import type { Forms } from '../words.ts';

/** What the masculine adjectives of the Portuguese words become beside other nouns. */
export const portugueseAgreement: Readonly<Record<string, Forms>> = {
  argiloso: { feminine: 'argilosa', plural: 'argilosos' },
  siltoso: { feminine: 'siltosa', plural: 'siltosos' },
  arenoso: { feminine: 'arenosa', plural: 'arenosos' },
  cascalhento: { feminine: 'cascalhenta', plural: 'cascalhentos' },
  turfoso: { feminine: 'turfosa', plural: 'turfosos' },
  lodoso: { feminine: 'lodosa', plural: 'lodosos' },
  laterítico: { feminine: 'laterítica', plural: 'lateríticos' },
  dolomítico: { feminine: 'dolomítica', plural: 'dolomíticos' },
  margoso: { feminine: 'margosa', plural: 'margosos' },
  fino: { feminine: 'fina', plural: 'finos' },
  'fino a médio': { feminine: 'fina a média', plural: 'finos a médios' },
  médio: { feminine: 'média', plural: 'médios' },
  'médio a grosso': { feminine: 'média a grossa', plural: 'médios a grossos' },
  grosso: { feminine: 'grossa', plural: 'grossos' },
  'fino a grosso': { feminine: 'fina a grossa', plural: 'finos a grossos' },
  são: { feminine: 'sã', plural: 'sãos' },
  'pouco alterado': { feminine: 'pouco alterada', plural: 'pouco alterados' },
  'medianamente alterado': {
    feminine: 'medianamente alterada',
    plural: 'medianamente alterados',
  },
  'muito alterado': { feminine: 'muito alterada', plural: 'muito alterados' },
  'completamente alterado': {
    feminine: 'completamente alterada',
    plural: 'completamente alterados',
  },
  seco: { feminine: 'seca', plural: 'secos' },
  húmido: { feminine: 'húmida', plural: 'húmidos' },
  molhado: { feminine: 'molhada', plural: 'molhados' },
  aquífero: { feminine: 'aquífera', plural: 'aquíferos' },
  fraturado: { feminine: 'fraturada', plural: 'fraturados' },
};
