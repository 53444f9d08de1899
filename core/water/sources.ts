import type { InLanguages, Source } from '../practice/practice.ts';

const all = (title: string): InLanguages => ({ en: title, fr: title, pt: title });

/** Where formulas and assumed figures come from; guideline values have their own sources. */
export const sources = {
  geometry: { title: { en: 'geometry', fr: 'géométrie', pt: 'geometria' }, mark: 'common' },
  common: {
    title: {
      en: 'common practice',
      fr: 'usage courant du métier',
      pt: 'prática corrente do ofício',
    },
    mark: 'common',
  },
  arithmetic: { title: { en: 'arithmetic', fr: 'calcul', pt: 'cálculo' }, mark: 'common' },
  whoRatio: {
    title: all(
      'WHO, Guidelines for drinking-water quality, 4th ed. incorporating the first and second addenda, 2022, ch. 12',
    ),
    mark: 'fromMemory',
  },
  hydrochemistry: {
    title: {
      en: 'hydrochemistry textbooks; APHA, Standard Methods, 2510 and 2540',
      fr: 'manuels d’hydrochimie ; APHA, Standard Methods, 2510 et 2540',
      pt: 'manuais de hidroquímica; APHA, Standard Methods, 2510 e 2540',
    },
    mark: 'fromMemory',
  },
  hardness: { title: all('APHA, Standard Methods, 2340 B'), mark: 'fromMemory' },
  ionBalance: { title: all('APHA, Standard Methods, 1030 E'), mark: 'fromMemory' },
  darcy: {
    title: {
      en: 'Darcy’s law, mean velocity in the pores',
      fr: 'loi de Darcy, vitesse moyenne dans les pores',
      pt: 'lei de Darcy, velocidade média nos poros',
    },
    mark: 'common',
  },
  conductivity: {
    title: all('Bouwer, Groundwater hydrology, McGraw-Hill, 1978'),
    mark: 'read',
  },
  conductivityOfSilt: { title: all('Freeze & Cherry, Groundwater, 1979'), mark: 'fromMemory' },
  specificYield: {
    title: all('Johnson, Specific yield, USGS Water-Supply Paper 1662-D, 1967'),
    mark: 'read',
  },
  rockPorosity: { title: all('Freeze & Cherry, Groundwater, 1979'), mark: 'fromMemory' },
  onSiteSanitation: {
    title: all(
      'ARGOSS, Guidelines for assessing the risk to groundwater from on-site sanitation, BGS CR/01/142, 2001',
    ),
    mark: 'fromMemory',
  },
  fiftyDays: {
    title: {
      en: 'fifty-day rule of protection zones in several countries; most, not all pathogens die within it',
      fr: 'règle des cinquante jours des périmètres de protection de plusieurs pays ; la plupart des germes y meurent, pas tous',
      pt: 'regra dos cinquenta dias das zonas de proteção de vários países; a maior parte dos germes morre nesse tempo, não todos',
    },
    mark: 'read',
  },
  whoNotes: {
    title: all('WHO, Technical notes on drinking-water, sanitation and hygiene in emergencies'),
    mark: 'read',
  },
  drilledWells: { title: all('AWWA C654; ICRC'), mark: 'fromMemory' },
  stock: {
    title: {
      en: 'stock of 1 % available chlorine, as emergency manuals give it',
      fr: 'solution mère à 1 % de chlore actif, selon les manuels d’urgence',
      pt: 'solução-mãe a 1 % de cloro ativo, segundo os manuais de emergência',
    },
    mark: 'read',
  },
  washing: {
    title: {
      en: 'emergency manuals, washing of well walls at 200 mg/l',
      fr: 'manuels d’urgence, lavage des parois à 200 mg/l',
      pt: 'manuais de emergência, lavagem das paredes a 200 mg/l',
    },
    mark: 'read',
  },
  productData: {
    title: {
      en: 'product data of hypochlorites',
      fr: 'fiches de produit des hypochlorites',
      pt: 'fichas de produto dos hipocloritos',
    },
    mark: 'fromMemory',
  },
} as const satisfies Record<string, Source>;
