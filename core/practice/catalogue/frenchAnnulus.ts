import type { FindingCode, FindingText } from './texts.ts';

type AnnulusCode = Extract<FindingCode, `annulus.${string}`>;

/** What stands between the wall of the hole and the casing. */
export const frenchAnnulus: Record<AnnulusCode, FindingText> = {
  'annulus.reversed': {
    title: 'Remplissage annulaire à l’envers',
    sentence:
      'Un remplissage finit plus haut qu’il ne commence ; il est pris de {fromM} m à {toM} m.',
    why: 'Les profondeurs se comptent vers le bas : le pied d’un remplissage est le plus grand chiffre.',
    todo: 'Intervertir les deux profondeurs, ou corriger celle qui est fausse.',
  },
  'annulus.empty': {
    title: 'Remplissage annulaire sans longueur',
    sentence: 'Un remplissage commence et finit à {fromM} m ; il est laissé de côté.',
    why: 'Un remplissage sans longueur n’a pas de volume.',
    todo: 'Écrire les profondeurs sondées de son sommet et de son pied.',
  },
  'annulus.aboveGround': {
    title: 'Remplissage au-dessus du sol',
    sentence:
      '{fill} : le remplissage commence au-dessus du sol, à {fromM} m ; il est coupé au niveau du sol.',
    why: 'L’espace annulaire finit au niveau du sol ; ce qui dépasse appartient à la superstructure.',
    todo: 'Écrire la partie hors sol comme dalle ou superstructure.',
  },
  'annulus.belowHole': {
    title: 'Remplissage sous le fond du trou',
    sentence:
      '{fill} : le remplissage descend à {toM} m, mais le trou a {depthM} m de profondeur ; il y est coupé.',
    why: 'Rien ne peut être versé sous le fond du trou ; l’une des deux profondeurs est fausse.',
    todo: 'Corriger le pied du remplissage ou la profondeur du trou.',
  },
  'annulus.noSuchString': {
    title: 'Remplissage autour d’aucune colonne',
    sentence:
      '{fill} de {fromM} m à {toM} m : le remplissage est noté autour de la colonne {string}, qui n’existe pas ; il est pris contre la paroi du trou.',
    why: 'Son volume dépend de l’espace annulaire qu’il remplit.',
    todo: 'Choisir la colonne qu’il entoure.',
  },
  'annulus.aboveString': {
    title: 'Remplissage plus haut que sa colonne',
    sentence:
      '{fill} de {fromM} m à {toM} m : le remplissage dépasse le haut de la colonne {string}, à l’intérieur d’une autre colonne ; cette partie est laissée de côté.',
    why: 'Au-dessus du haut d’une colonne suspendue, il n’y a pas d’espace annulaire autour d’elle.',
    todo: 'Corriger le sommet du remplissage, ou choisir la colonne qu’il entoure.',
  },
  'annulus.insideString': {
    title: 'Trou rempli là où se tient une colonne',
    sentence:
      '{fill} de {fromM} m à {toM} m : le remplissage est noté dans tout le trou, mais la colonne {string} s’y tient ; il est pris à l’intérieur de la colonne.',
    why: 'Quand une colonne est restée dans le trou, ce qui est versé se trouve dedans et non autour.',
    todo: 'Si la colonne a été retirée, l’ôter de la fiche ; si le remplissage l’entoure, l’écrire.',
  },
  'annulus.overlap': {
    title: 'Remplissages qui se chevauchent',
    sentence:
      'De {fromM} m à {toM} m, deux remplissages sont notés dans le même espace annulaire : {other} et {fill}.',
    why: 'Le plus bas était là le premier et il est dessiné jusqu’à son sommet ; l’autre peut être le vrai.',
    todo: 'Finir chaque remplissage là où le suivant a été sondé.',
  },
  'annulus.unrecorded': {
    title: 'Espace annulaire non relevé',
    sentence:
      'Rien n’est noté entre la colonne {string} et ce qui l’entoure de {fromM} m à {toM} m.',
    why: 'Un espace annulaire vide, ou rempli d’on ne sait quoi, peut laisser descendre de l’eau souillée.',
    todo: 'Écrire ce qui s’y trouve : remplissage, éboulement naturel ou vide.',
  },
  'annulus.unrecordedHole': {
    title: 'Trou sous la colonne non relevé',
    sentence: 'Rien n’est noté du trou hors de toute colonne de {fromM} m à {toM} m.',
    why: 'On ne sait pas s’il est resté ouvert, s’est éboulé ou a été rempli.',
    todo: 'Écrire ce qui s’y trouve : remplissage, éboulement naturel ou vide.',
  },
};
