import type { FindingCode, FindingText } from './texts.ts';

type GroundCode = Extract<FindingCode, `bore.${string}` | `log.${string}` | `sample.${string}`>;

/** The hole and the log. */
export const frenchGround: Record<GroundCode, FindingText> = {
  'bore.reversed': {
    title: 'Tronçon de forage à l’envers',
    sentence:
      'Un tronçon de forage finit plus haut qu’il ne commence ; il est pris de {fromM} m à {toM} m.',
    why: 'Les profondeurs se comptent vers le bas : le pied d’un tronçon est le plus grand chiffre.',
    todo: 'Intervertir les deux profondeurs, ou corriger celle qui est fausse.',
  },
  'bore.empty': {
    title: 'Tronçon de forage sans longueur',
    sentence: 'Un tronçon de forage commence et finit à {fromM} m ; il est laissé de côté.',
    why: 'Un tronçon sans longueur ne dit aucun diamètre.',
    todo: 'Écrire la profondeur du changement d’outil, ou supprimer le tronçon.',
  },
  'bore.aboveGround': {
    title: 'Tronçon de forage au-dessus du sol',
    sentence:
      'Un tronçon de forage commence au-dessus du sol, à {fromM} m ; il est coupé au niveau du sol.',
    why: 'Les profondeurs se mesurent depuis le sol, et il n’y a pas de trou au-dessus.',
    todo: 'Vérifier si les profondeurs ont été mesurées depuis un autre repère, comme la table de la foreuse.',
  },
  'bore.noDiameter': {
    title: 'Tronçon de forage sans diamètre',
    sentence:
      'Le tronçon de forage de {fromM} m à {toM} m n’a pas de diamètre ; il est laissé de côté.',
    why: 'Sans le diamètre, on ne connaît ni espace annulaire ni volume.',
    todo: 'Écrire le diamètre de l’outil qui a foré ce tronçon.',
  },
  'bore.overlap': {
    title: 'Tronçons de forage qui se chevauchent',
    sentence:
      'De {fromM} m à {toM} m, le trou est noté avec deux diamètres, {otherMm} mm et {diameterMm} mm ; le plus grand est pris.',
    why: 'Un trou alésé est aussi large que son outil le plus large, mais les profondeurs peuvent être fausses.',
    todo: 'Si le trou a été alésé, finir le tronçon étroit là où finit le plus large.',
  },
  'bore.gap': {
    title: 'Diamètre du trou manquant',
    sentence: 'Aucun diamètre du trou n’est noté de {fromM} m à {toM} m.',
    why: 'Sans le diamètre, on ne connaît ici ni espace annulaire ni volume.',
    todo: 'Écrire l’outil qui a foré cette partie.',
  },
  'bore.diametersUnknown': {
    title: 'Diamètre du trou non relevé',
    sentence: 'Le diamètre du trou n’est noté à aucune profondeur jusqu’à {toM} m.',
    why: 'Sans lui, l’espace annulaire n’a pas de volume, et l’on ne sait pas si les colonnes passent.',
    todo: 'Écrire chaque outil avec les profondeurs qu’il a forées.',
  },
  'bore.depthNotBelowGround': {
    title: 'Profondeur du trou impossible',
    sentence: 'La profondeur atteinte est notée {depthM} m, ce qui n’est pas sous le sol.',
    why: 'Les profondeurs se comptent vers le bas depuis le sol.',
    todo: 'Écrire la profondeur atteinte en chiffre positif.',
  },
  'bore.depthAssumed': {
    title: 'Profondeur du trou non relevée',
    sentence:
      'La profondeur du trou n’est pas notée ; {depthM} m est pris, le point le plus bas de la coupe ou des colonnes.',
    why: 'Le trou peut être plus profond ; les volumes et le pied du dessin sont alors faux.',
    todo: 'Écrire la profondeur atteinte.',
  },
  'bore.sectionBelowDepth': {
    title: 'Tronçon de forage sous le fond du trou',
    sentence:
      'Un tronçon de forage va de {fromM} m à {toM} m, mais le trou a atteint {depthM} m ; il y est coupé.',
    why: 'L’une des deux profondeurs est fausse.',
    todo: 'Corriger le tronçon ou la profondeur atteinte.',
  },
  'bore.foundBelowDepth': {
    title: 'Sondé plus profond que foré',
    sentence: 'Le fond a été retrouvé à {foundM} m, plus bas que les {depthM} m forés.',
    why: 'Un trou peut s’ébouler avant le tubage, mais non s’approfondir.',
    todo: 'Vérifier les deux profondeurs, et le repère de chaque mesure.',
  },
  'sample.reversed': {
    title: 'Échantillon à l’envers',
    sentence:
      'Un échantillon finit plus haut qu’il ne commence ; il est pris de {fromM} m à {toM} m.',
    why: 'Les profondeurs se comptent vers le bas : le pied d’un échantillon est le plus grand chiffre.',
    todo: 'Intervertir les deux profondeurs, ou corriger celle qui est fausse.',
  },
  'sample.belowHole': {
    title: 'Échantillon venu de sous le trou',
    sentence: 'Un échantillon viendrait de {toM} m, mais le trou finit à {depthM} m.',
    why: 'Rien ne remonte d’où personne n’a foré : l’une des deux profondeurs est fausse.',
    todo: 'Compter les sacs contre les mètres forés, et corriger l’échantillon ou la profondeur atteinte.',
  },
  'log.reversed': {
    title: 'Intervalle de la coupe à l’envers',
    sentence:
      'Un intervalle de la coupe finit plus haut qu’il ne commence ; il est pris de {fromM} m à {toM} m.',
    why: 'Les profondeurs se comptent vers le bas : le pied d’un intervalle est le plus grand chiffre.',
    todo: 'Intervertir les deux profondeurs, ou corriger celle qui est fausse.',
  },
  'log.empty': {
    title: 'Intervalle de la coupe sans longueur',
    sentence: 'Un intervalle de la coupe commence et finit à {fromM} m ; il est laissé de côté.',
    why: 'Un intervalle sans longueur ne peut pas être dessiné.',
    todo: 'Écrire où le terrain finissait, ou supprimer l’intervalle.',
  },
  'log.overlap': {
    title: 'Intervalles de la coupe qui se chevauchent',
    sentence: 'De {fromM} m à {toM} m, la coupe contient deux terrains.',
    why: 'Une lentille dans un intervalle est dessinée ; sinon l’intervalle du haut est dessiné jusqu’à son pied, et l’autre peut être le vrai.',
    todo: 'Commencer chaque intervalle là où finit celui du dessus.',
  },
  'log.sameRange': {
    title: 'Plusieurs terrains sur une même plage',
    sentence:
      'De {fromM} m à {toM} m, la coupe contient {count} intervalles ; ils n’en font qu’un, le premier comme terrain principal.',
    why: 'Les foreurs notent ainsi deux terrains qui alternent.',
    todo: 'S’ils sont l’un sur l’autre, écrire la profondeur où le terrain change.',
  },
  'log.gap': {
    title: 'Lacune dans la coupe',
    sentence: 'La coupe ne dit rien de {fromM} m à {toM} m.',
    why: 'On ne peut pas juger ce qui s’y trouve en face de la crépine et des bouchons.',
    todo: 'Écrire ce qui a été vu, ou un intervalle sans échantillon si rien ne l’a été.',
  },
  'log.short': {
    title: 'Coupe arrêtée avant le fond du trou',
    sentence: 'La coupe s’arrête à {fromM} m ; le trou descend à {toM} m.',
    why: 'On ne sait pas dans quoi se tient le pied du forage.',
    todo: 'Écrire ce qui a été vu plus bas, ou corriger la profondeur atteinte.',
  },
  'log.aboveGround': {
    title: 'Coupe qui commence au-dessus du sol',
    sentence: 'La coupe commence au-dessus du sol, à {fromM} m.',
    why: 'Les profondeurs se mesurent depuis le sol.',
    todo: 'Vérifier si les profondeurs ont été mesurées depuis un autre repère, comme la table de la foreuse.',
  },
  'log.belowHole': {
    title: 'Coupe plus profonde que le trou',
    sentence: 'La coupe descend à {toM} m, mais le trou a {depthM} m de profondeur.',
    why: 'Rien n’a pu être vu sous le fond du trou ; l’une des deux profondeurs est fausse.',
    todo: 'Corriger le pied de l’intervalle ou la profondeur du trou.',
  },
};
