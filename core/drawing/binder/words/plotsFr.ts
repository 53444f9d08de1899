import type { PlotWords } from './plots.ts';

export const plotsFrench: PlotWords = {
  spread: 'Graphiques : profondeurs et débits',
  success: 'Graphiques : ce que le forage a trouvé',
  quality: 'Graphiques : qualité de l’eau',
  depths: 'Profondeurs forées',
  safeYields: 'Débits d’exploitation selon les essais',
  otherYields: 'Autres débits : du dernier essai, ou de la pompe en service',
  known: 'Connu de {n} forages sur {of}.',
  median: 'Ligne de tirets et points : la médiane, {value}.',
  byYear: 'Par année',
  byGeology: 'Par terrain',
  noLog: 'sans coupe',
  outcomes: { water: 'forage équipé', dry: 'forage sec', open: 'ni l’un ni l’autre, ou non noté' },
  share: '{water} sur {decided} avec eau ({share} %)',
  openCount: '{open} autres',
  successSays:
    'Terrain : le matériau de la plus grande partie de chaque coupe. Les trous seulement prévus sont laissés de côté. La part compte les forages équipés parmi les forages équipés et les forages secs. Peu de trous disent peu, et ils n’ont pas été placés au hasard : ces parts ne prédisent rien du suivant.',
  qualitySays:
    'Un point pour le dernier résultat de chaque forage où le paramètre a été cherché ; un cercle là où il était sous la limite de détection, à cette limite. Traits pleins : valeurs fondées sur la santé ; tirets : toutes les autres. Les résultats hors de l’axe sont à son bout.',
  set: '{name} : analyses de {n} forages sur {of}',
  results: 'résultats : {n}',
  above: 'au-dessus de {value} : {n} sur {of}',
  under: 'au-dessous de {value} : {n} sur {of}',
  untold: 'non dit : {n}',
};
