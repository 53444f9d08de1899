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
  'pad.thin': {
    title: 'Dalle en béton trop mince',
    sentence: 'La dalle en béton a {built} m d’épaisseur ; il en faut au moins {least} m.',
    why: 'Une dalle mince se fissure, et l’eau répandue descend le long du tubage.',
    todo: 'Mesurer l’épaisseur au bord ; si elle est bien telle, chercher les fissures et faire refaire ou épaissir la dalle.',
  },
  'pad.small': {
    title: 'Dalle en béton petite',
    sentence:
      'Le petit côté de la dalle en béton mesure {built} m ; au moins {least} m est conseillé.',
    why: 'L’eau répandue par les usagers tombe à côté d’une petite dalle et détrempe le sol autour du tubage.',
    todo: 'Mesurer les deux côtés ; si c’est bien cela, élargir la dalle ou paver autour avec une pente qui éloigne l’eau du forage.',
  },
  'drain.short': {
    title: 'Rigole courte',
    sentence: 'La rigole a {built} m de long ; au moins {least} m est courant.',
    why: 'Une rigole courte laisse une mare près du forage, où boivent les bêtes et naissent les moustiques.',
    todo: 'Mener l’eau plus loin, vers un puits perdu ou un jardin, plus bas que la dalle.',
  },
  'drain.flat': {
    title: 'Rigole trop plate',
    sentence: 'La rigole a une pente de {built} % ; il en faut au moins {least} %.',
    why: 'L’eau stagne dans une rigole plate, qui s’envase et déborde sur la dalle.',
    todo: 'Vérifier la pente au niveau ou en versant de l’eau ; faire reprendre la rigole là où l’eau stagne.',
  },
};
