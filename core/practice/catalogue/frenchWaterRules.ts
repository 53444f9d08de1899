import type { waterCodes } from '../rules/water/codes.ts';
import type { FindingText } from './texts.ts';

/** Results of water samples, the kind of pump, the rate. */
export const frenchWaterRules: Readonly<Record<keyof typeof waterCodes, FindingText>> = {
  'quality.aboveHealth': {
    title: 'Valeur sanitaire dépassée : {parameter}',
    sentence:
      '{parameter} : le dernier résultat est de {reading} {unit}, au-dessus de la valeur fondée sur la santé de {allowed} {unit}.',
    why: 'Une telle eau peut rendre malades ceux qui la boivent, tout de suite ou après des années.',
    todo: 'Ne plus l’utiliser pour la boisson jusqu’à la décision de l’autorité sanitaire ; prélever un autre échantillon et le faire analyser.',
  },
  'quality.untested': {
    title: 'Non analysé avant la remise : {parameter}',
    sentence:
      '{parameter} : aucun échantillon n’a été analysé pour ce paramètre, demandé avant la remise.',
    why: 'Ce que personne n’a cherché n’est pas connu ; une eau claire et sans goût n’en dit rien.',
    todo: 'Le faire analyser, ou écrire le résultat s’il existe ; consulter ce que demandent les règles locales.',
  },
  'suits.lift': {
    title: 'Eau trop profonde pour ce type de pompe',
    sentence:
      'L’eau est à élever de {liftM} m ou plus ; une pompe de ce type élève au plus de {mostM} m.',
    why: 'Au-delà de sa hauteur, une pompe donne peu d’eau ou point, et ses pièces s’usent vite et cassent.',
    todo: 'Vérifier les niveaux d’eau et le type de pompe ; s’ils sont justes, choisir un type fait pour cette hauteur.',
  },
  'suits.casing': {
    title: 'Forage trop étroit pour ce type de pompe',
    sentence:
      'Le forage a {insideMm} mm à l’intérieur là où passe la pompe ; une pompe de ce type en demande au moins {leastMm} mm.',
    why: 'Dans un tubage étroit, une pompe se coince à la descente, ou ne remonte plus pour être réparée.',
    todo: 'Vérifier la taille des tubes et le type de pompe ; s’ils sont justes, choisir un type plus mince.',
  },
  'suits.flow': {
    title: 'Pompe en dessous du besoin des usagers',
    sentence:
      'Pour le besoin des usagers, une pompe de ce type devrait marcher {hours} h par jour.',
    why: 'Une journée n’a pas autant d’heures : on attend, ou l’on retourne à une autre eau.',
    todo: 'Vérifier le nombre d’usagers ; s’il est juste, choisir un type qui donne plus, ou prévoir un second point d’eau.',
  },
  'rate.untested': {
    title: 'Débit au-dessus de celui des essais',
    sentence: '{rate} m³/h sont à pomper ; aucun essai de pompage n’a dépassé {tested} m³/h.',
    why: 'Au-dessus du débit essayé, nul ne sait jusqu’où l’eau descend : la pompe peut tourner à sec ou tirer du sable.',
    todo: 'Essayer le forage à ce débit, ou ne pas pomper plus que lors des essais.',
  },
};
