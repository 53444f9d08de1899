import type { ReasonTexts } from './reason.ts';

/** The reasons in French. */
export const french: ReasonTexts = {
  leftOut: '{says} Corriger et relire le fichier ; la ligne a été laissée de côté.',
  ofRecord: '{says}.',
  restComes: '{says} ; le reste de la fiche est repris.',
  restOfWellComes: '{says} ; le reste du puits est repris.',

  noColumn: 'Le fichier n’a pas de colonne « {column} » ; il n’a pas été lu.',
  twoColumns: 'Le fichier a deux colonnes « {column} » ; il n’a pas été lu.',
  longCell: 'La cellule contient plus de {letters} lettres.',
  raggedRow: 'La ligne a {cells} cellules sous {headings} en-têtes.',
  noWell: 'La ligne ne nomme aucun puits.',
  fileMissing: 'La correspondance nomme {file}, qui n’a pas été donné.',
  fileUnnamed: 'La correspondance ne nomme pas {file} ; il n’a pas été lu.',
  saidOtherwise: 'Le puits « {well} » est décrit autrement à la ligne {line}, qui est gardée.',
  saidAlready: 'Le puits « {well} » a déjà une ligne plus haut.',
  upsideDown: 'Le bas, {to} m, n’est pas plus profond que le haut, {from} m.',
  emptyCell: 'La cellule est vide ; une ligne de « {kind} » a besoin de son « {name} ».',
  noPointNumber: '« {text} » n’est pas un nombre à point décimal.',
  noCommaNumber: '« {text} » n’est pas un nombre à virgule décimale.',
  notWhole: '« {text} » n’est pas un nombre entier.',
  noUnit: '« {written} » n’est pas une unité de longueur ; sont connues {units}.',
  notDay: '« {text} » n’est pas un jour écrit dans l’ordre {order}.',
  unknownWord: '« {text} » n’est pas parmi les mots que la correspondance connaît.',

  brokenJson:
    'La fiche qui commence ici n’est pas du JSON complet ; elle n’a pas été lue. Écrire de nouveau le fichier.',
};
