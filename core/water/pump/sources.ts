import type { Source } from '../../practice/practice.ts';

/** A publication, whose title is the same in every language. */
function printed(title: string, mark: Source['mark']): Source {
  return { title: { en: title, fr: title, pt: title }, mark };
}

/** Where the figures on pumps come from. */
export const pumpSources = {
  common: {
    title: {
      en: 'common practice',
      fr: 'usage courant du métier',
      pt: 'prática corrente do ofício',
    },
    mark: 'common',
  },
  trade: {
    title: {
      en: 'handbooks of rural water supply',
      fr: 'manuels d’hydraulique villageoise',
      pt: 'manuais de abastecimento de água rural',
    },
    mark: 'fromMemory',
  },
  geometry: {
    title: { en: 'geometry', fr: 'géométrie', pt: 'geometria' },
    mark: 'common',
  },
  handpumpsBrief: printed('WaterAid, technical brief Handpumps, 2013', 'read'),
  ropePump: printed('Akvopedia, Rope pump', 'read'),
  ropePumpNote: printed('Akvopedia, Rope pump; RWSN note', 'read'),
  practicalAction: {
    title: {
      en: 'Practical Action, pages on handpumps',
      fr: 'Practical Action, pages sur les pompes manuelles',
      pt: 'Practical Action, páginas sobre bombas manuais',
    },
    mark: 'read',
  },
  directAction: {
    title: {
      en: 'maker’s data on a direct action pump to IS 14106',
      fr: 'données d’un fabricant, pompe à action directe selon IS 14106',
      pt: 'dados de um fabricante, bomba de ação direta segundo a IS 14106',
    },
    mark: 'read',
  },
  directActionHeavy: printed('Akvopedia, heavy-duty direct action pump', 'read'),
  is15500: printed('Akvopedia, deepwell lever handpumps of the IS 15500 family', 'read'),
  ratedFlow: {
    title: {
      en: 'Published table of rated flow of the IS 15500 lever handpump',
      fr: 'Tableau publié du débit nominal de la pompe à levier IS 15500',
      pt: 'Tabela publicada do caudal nominal da bomba de alavanca IS 15500',
    },
    mark: 'read',
  },
  plasticRiser: {
    title: {
      en: 'Published description of the deepwell lever handpump with PVC riser',
      fr: 'Description publiée de la pompe à levier à colonne montante en PVC',
      pt: 'Descrição publicada da bomba de alavanca com tubo de subida em PVC',
    },
    mark: 'read',
  },
  plasticRiserSpec: {
    title: {
      en: 'RWSN, specification of the deepwell lever handpump with PVC riser',
      fr: 'RWSN, spécification de la pompe à levier à colonne montante en PVC',
      pt: 'RWSN, especificação da bomba de alavanca com tubo de subida em PVC',
    },
    mark: 'fromMemory',
  },
  sphere: {
    title: {
      en: 'Sphere Handbook, 2018, as a published note lists it',
      fr: 'Sphere Handbook, 2018, selon une note publiée',
      pt: 'Sphere Handbook, 2018, segundo uma nota publicada',
    },
    mark: 'read',
  },
  sphereTable: {
    title: {
      en: 'Published note on Sphere figures, handpump over about 8 hours a day',
      fr: 'Note publiée sur les valeurs Sphere, pompe environ 8 heures par jour',
      pt: 'Nota publicada sobre os valores Sphere, bomba cerca de 8 horas por dia',
    },
    mark: 'read',
  },
  solarBook: printed('Masters, Renewable and Efficient Electric Power Systems, ch. 9', 'read'),
  swameeJain: printed('Darcy–Weisbach; Swamee and Jain, 1976', 'fromMemory'),
  moody: {
    title: {
      en: 'Moody, 1944, roughness of pipes',
      fr: 'Moody, 1944, rugosité des tuyaux',
      pt: 'Moody, 1944, rugosidade dos tubos',
    },
    mark: 'fromMemory',
  },
  water: {
    title: {
      en: 'tables of water at 20 °C',
      fr: 'tables de l’eau à 20 °C',
      pt: 'tabelas da água a 20 °C',
    },
    mark: 'fromMemory',
  },
} as const satisfies Record<string, Source>;
