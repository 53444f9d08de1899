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

  notNumberOut: '« {text} » n’est pas un nombre ; il a été laissé de côté.',
  notTimeOut:
    '« {text} » n’est pas un moment écrit comme 2026-03-04T08:30 ; il a été laissé de côté.',
  notCount: '« {text} » n’est pas un compte ; il a été laissé de côté.',
  noLength: 'L’unité « {unit} » n’est pas une longueur ; {value} a été laissé de côté.',
  noFlow: 'L’unité « {unit} » n’est pas un débit ; {value} a été laissé de côté.',
  levelUnit: 'Un niveau en « {unit} » ne se lit pas ; le donner en mètres.',
  otherDatum: 'Une position sur « {datum} » n’est pas en WGS 84 ; elle a été laissée de côté.',
  nearDatum: 'Une position en GDA94 est prise comme en WGS 84, à deux mètres près.',
  onGrid:
    'Une position sur une grille nationale n’est pas en WGS 84 ; seule sa hauteur est reprise.',
  notDegrees:
    '« {latitude} », « {longitude} » n’est pas une position en degrés ; elle a été laissée de côté.',
  notOnEarth:
    '{latitude}, {longitude} ne sont pas une latitude et une longitude ; elles ont été laissées de côté.',
  swapped:
    '{latitude}, {longitude} ne sont pas une latitude et une longitude ; elles ont été laissées de côté. Elles semblent interverties.',
  inTheSea: 'La position 0, 0 est en mer au large de l’Afrique ; elle a été laissée de côté.',
  noPosition: 'La ligne n’a pas de position, que la norme demande.',
  halfPosition: 'Une position a besoin de la latitude et de la longitude.',
  noPoint: 'Une géométrie « {type} » n’est pas un point ; le puits est repris sans elle.',
  halfRange: '{part} n’a qu’une de ses deux profondeurs ; cela a été laissé de côté.',
  rangeUpsideDown:
    'Le bas, {to} m, n’est pas plus profond que le haut, {from} m ; cela a été laissé de côté.',
  noRange: 'L’intervalle n’a pas deux profondeurs, le bas sous le haut ; il a été laissé de côté.',
  noPieceKind: '« {word} » n’est pas une sorte de tube connue ; la ligne a été laissée de côté.',
  noFill: '« {word} » n’est pas un remplissage d’espace annulaire connu ; il a été laissé de côté.',
  halfCasing: 'Un tubage a besoin de sa profondeur et de son diamètre ; il a été laissé de côté.',
  diameterAlone: 'Un diamètre de {diameter} mm sans profondeur a été laissé de côté.',
  lastRise: 'De plusieurs niveaux après la venue d’eau, le dernier est repris.',
  noReading:
    'Une lecture de « {type} » n’a pas de place dans une fiche ; elle a été laissée de côté.',
  heightMissing: 'Un niveau sans sa hauteur et celle de son point de mesure a été laissé de côté.',
  notAWell: '« {source} » n’est pas un puits ; cela est repris comme un puits sans trou.',
  noLoca: '{well} n’a pas de ligne dans LOCA ; ce que les autres groupes en disent est repris.',
  longRow: 'La ligne a {fields} champs sous {headings} en-têtes de {group}.',
  strangeLine:
    'Une ligne d’AGS 4 commence par GROUP, HEADING, UNIT, TYPE ou DATA, et non par « {word} » ; elle a été laissée de côté.',
  beforeGroups: 'La ligne est avant le premier GROUP ; elle a été laissée de côté.',
  groupLeft:
    'Rien dans une fiche n’est pour {group} ; ses lignes, {count} en tout, ont été laissées de côté.',
  headingsLeft:
    'Rien dans une fiche n’est pour {headings} de {group} ; ce qui s’y trouve a été laissé de côté.',
  partLeft: 'Rien dans une fiche n’est pour {part} ; cela a été laissé de côté.',
  propertyLeft:
    'Aucun champ d’une fiche ne s’appelle « {name} » ; il a été laissé de côté pour tous les puits.',
  columnsLeft:
    'Rien dans une fiche n’est pour les colonnes {columns}, dont la plupart sont écrites par la plateforme ; elles ont été laissées de côté.',
  unclosedQuote:
    'Un guillemet qui s’ouvre ici n’est jamais fermé ; le reste du fichier n’a pas été lu. Le fermer, ou l’enlever.',
  gapBetween:
    'Rien n’est donné entre {above} m et {below} m ; ce qui est en dessous est pris comme une colonne à part.',
  noString: 'Aucune colonne de ce puits ne répond à {name} ; la ligne a été laissée de côté.',
  tooNew:
    'Cette fiche est de la version {version}, plus récente que ce programme ne la connaît ({known}) ; l’ouvrir avec un Borefolio plus récent.',
  comesTwice: '{number} vient aussi de {file}, ligne {line} ; les deux sont repris.',
  fileRefused: '{says}',
};
