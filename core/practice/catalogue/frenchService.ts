import type { serviceCodes } from '../rules/service/codes.ts';
import type { FindingText } from './texts.ts';

/** The site, the work and the handover. */
export const frenchService: Readonly<Record<keyof typeof serviceCodes, FindingText>> = {
  'dates.order': {
    title: 'Dates dans le désordre',
    sentence: '{later} ({laterOn}) précède {earlier} ({earlierOn}).',
    why: 'Un site est convenu, puis le forage exécuté et terminé ; seul un trou terminé se développe, s’essaie et se réceptionne : l’une des deux dates est fausse.',
    todo: 'Comparer les deux dates avec le carnet de chantier et corriger celle qui est fausse.',
  },
  'samples.sparse': {
    title: 'Mètres sans échantillon',
    sentence:
      '{bareM} m du trou sont sans échantillon, les premiers de {fromM} m à {toM} m ; il en faut un tous les {eachM} m.',
    why: 'Une couche que personne n’a étalée peut échapper, et crépine et bouchons se placent d’après les échantillons.',
    todo: 'Écrire les échantillons prélevés ; là où rien n’est remonté, le dire dans la coupe, et n’y placer ni crépine ni bouchon au jugé.',
  },
};
