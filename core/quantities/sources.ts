import type { Source } from '../practice/practice.ts';

/** Where the formulas come from. */
export const sources = {
  geometry: {
    title: { en: 'geometry', fr: 'géométrie', pt: 'geometria' },
    mark: 'common',
  },
  common: {
    title: {
      en: 'common practice',
      fr: 'usage courant du métier',
      pt: 'prática corrente do ofício',
    },
    mark: 'common',
  },
  cement: {
    title: { en: 'cement handbooks', fr: 'manuels du ciment', pt: 'manuais do cimento' },
    mark: 'fromMemory',
  },
  concrete: {
    title: { en: 'handbooks of concrete', fr: 'manuels du béton', pt: 'manuais do betão' },
    mark: 'fromMemory',
  },
} as const satisfies Record<string, Source>;
