import type { FindingCode, FindingText } from './texts.ts';

type StringCode = Extract<FindingCode, `string.${string}` | `screen.${string}`>;

/** Casing strings and their screens. */
export const frenchStrings: Record<StringCode, FindingText> = {
  'string.noPieces': {
    title: 'Colonne impossible à placer',
    sentence:
      'La colonne {string} n’a aucune pièce dont la longueur soit connue ; elle est laissée de côté.',
    why: 'Les profondeurs du tubage et de la crépine viennent des longueurs des pièces.',
    todo: 'Écrire les pièces de bas en haut, avec la longueur de chacune.',
  },
  'string.noLength': {
    title: 'Pièce sans longueur',
    sentence:
      'Colonne {string} : une pièce ({piece}) n’a pas de longueur ; elle est laissée de côté.',
    why: 'Toutes les pièces au-dessus se tiennent alors trop bas, ou le haut de la colonne est trop bas.',
    todo: 'Écrire la longueur d’une pièce, d’un bout à l’autre, tulipe comprise.',
  },
  'string.noDiameter': {
    title: 'Diamètre extérieur non relevé',
    sentence:
      'Pièces de la colonne {string} sans diamètre extérieur, de {fromM} m à {toM} m : {count} sur {of}.',
    why: 'Sans lui, l’espace annulaire autour d’elles n’a pas de volume.',
    todo: 'Écrire le diamètre extérieur en millimètres.',
  },
  'string.noWall': {
    title: 'Épaisseur de paroi non relevée',
    sentence:
      'Pièces de la colonne {string} sans épaisseur ni diamètre intérieur : {count} sur {of}.',
    why: 'Le diamètre intérieur dit quelle pompe passe et combien d’eau le forage contient.',
    todo: 'Écrire l’épaisseur en millimètres, comme imprimée sur le tube, ou le diamètre intérieur.',
  },
  'string.wallTooThick': {
    title: 'Paroi plus épaisse que le tube',
    sentence:
      'Colonne {string} : une pièce ({piece}) de {outsideMm} mm a une paroi de {wallMm} mm, ce qui ne laisse pas de vide.',
    why: 'Deux fois l’épaisseur doit être moins que le diamètre extérieur.',
    todo: 'Vérifier si l’épaisseur a été écrite dans une autre unité, ou un diamètre à sa place.',
  },
  'string.insideTooWide': {
    title: 'Intérieur plus large que le tube',
    sentence:
      'Colonne {string} : une pièce ({piece}) de {outsideMm} mm à l’extérieur est notée {insideMm} mm à l’intérieur ; l’intérieur est ignoré.',
    why: 'Un tube est plus étroit dedans que dehors.',
    todo: 'Vérifier si les deux diamètres ont été intervertis.',
  },
  'string.sizesDisagree': {
    title: 'Extérieur, paroi et intérieur en désaccord',
    sentence:
      'Colonne {string} : une pièce ({piece}) de {outsideMm} mm avec une paroi de {wallMm} mm est notée {insideMm} mm à l’intérieur ; l’intérieur noté est pris.',
    why: 'L’intérieur est l’extérieur moins deux fois la paroi ; l’un des trois est faux.',
    todo: 'Corriger celui qui est faux, ou laisser vide celui qui n’a pas été mesuré.',
  },
  'string.countTooHigh': {
    title: 'Trop de pièces pareilles',
    sentence:
      'Colonne {string} : {count} pièces pareilles ({piece}) sont notées ; {most} sont prises.',
    why: 'Aucun forage n’en contient autant ; une longueur est peut-être à la place du nombre.',
    todo: 'Corriger le nombre.',
  },
  'string.insertionTooLong': {
    title: 'Emboîtement plus long que sa pièce',
    sentence:
      'Colonne {string} : une pièce ({piece}) entre de {insertionM} m dans celle du dessous, autant que l’une des deux est longue ; l’emboîtement n’est pas déduit.',
    why: 'Un emboîtement est court ; sans le vrai chiffre, le décompte des pièces est faux.',
    todo: 'Écrire l’emboîtement en mètres, par exemple 0,10.',
  },
  'string.centraliserOffPiece': {
    title: 'Centreur hors de sa pièce',
    sentence:
      'Colonne {string} : un centreur est noté {heightM} m au-dessus du bas d’une pièce ({piece}) longue de {lengthM} m ; il est laissé de côté.',
    why: 'La hauteur d’un centreur se mesure sur sa propre pièce.',
    todo: 'Écrire la hauteur au-dessus du bas de cette pièce.',
  },
  'string.reducerOneSize': {
    title: 'Réduction à un seul diamètre',
    sentence: 'Colonne {string} : le diamètre supérieur d’une réduction n’est pas noté.',
    why: 'Elle est dessinée comme un tube droit, et l’espace annulaire autour n’est pas exact.',
    todo: 'Écrire le diamètre extérieur à son bout supérieur.',
  },
  'string.reducerMisfit': {
    title: 'Réduction qui ne va pas',
    sentence:
      'Colonne {string} : à {fromM} m, un bout de réduction de {reducerMm} mm rencontre un tube de {neighbourMm} mm.',
    why: 'Une réduction finit aux diamètres de ses voisins ; elle est peut-être à l’envers.',
    todo: 'Vérifier les diamètres, et que les pièces sont écrites de bas en haut.',
  },
  'string.stepWithoutReducer': {
    title: 'Changement de diamètre sans réduction',
    sentence:
      'Colonne {string} : à {fromM} m, un tube de {upperMm} mm se tient sur un tube de {lowerMm} mm sans réduction.',
    why: 'Une réduction manque peut-être au décompte, et sa longueur avec elle.',
    todo: 'Écrire la réduction, ou corriger le diamètre.',
  },
  'string.placedAtHoleBottom': {
    title: 'Position de la colonne non relevée',
    sentence:
      'Rien ne dit où se tient la colonne {string} ; elle est dessinée posée au fond du trou, à {bottomM} m.',
    why: 'Toutes les profondeurs de crépine et de tubage dépendent de ce seul chiffre.',
    todo: 'Écrire la profondeur de son bout inférieur, ou de combien son haut dépasse du sol.',
  },
  'string.placedAtGround': {
    title: 'Position de la colonne non relevée',
    sentence: 'Rien ne dit où se tient la colonne {string} ; elle est dessinée à partir du sol.',
    why: 'Toutes les profondeurs de crépine et de tubage dépendent de ce seul chiffre.',
    todo: 'Écrire la profondeur de son bout inférieur, ou de combien son haut dépasse du sol.',
  },
  'string.measuredElsewhere': {
    title: 'Profondeur mesurée et décompte différents',
    sentence:
      'Colonne {string} : son bout inférieur a été mesuré à {measuredM} m, le décompte des pièces le met à {tallyBottomM} m ({differenceM} m d’écart).',
    why: 'Une pièce ou un joint manque peut-être au décompte, ou la colonne pend ou s’est enfoncée.',
    todo: 'Recompter les pièces et les joints, et vérifier la position.',
  },
  'string.stickUpElsewhere': {
    title: 'Hauteur du tubage et décompte différents',
    sentence:
      'Le haut du tubage a été mesuré à {measuredM} m au-dessus du sol, le décompte de la colonne {string} le met à {stickUpM} m.',
    why: 'Ou le tubage a été coupé ensuite, ou le décompte et la position ne s’accordent pas.',
    todo: 'Écrire la pièce coupée avec la longueur restante, ou corriger la position.',
  },
  'string.belowHole': {
    title: 'Colonne plus profonde que le trou',
    sentence: 'La colonne {string} atteint {bottomM} m, mais le trou a {depthM} m de profondeur.',
    why: 'Une colonne ne peut pas se tenir sous le fond du trou.',
    todo: 'Vérifier le décompte, la position et la profondeur atteinte.',
  },
  'string.widerThanHole': {
    title: 'Colonne plus large que le trou',
    sentence:
      'De {fromM} m à {toM} m, la colonne {string} a {outsideMm} mm de large dans un trou de {holeMm} mm.',
    why: 'Elle n’a pas pu y entrer ; on ne connaît pas d’espace annulaire ici.',
    todo: 'Corriger le diamètre du trou ou du tube.',
  },
  'string.insideWiderThanHole': {
    title: 'Colonne plus large dedans que le trou',
    sentence:
      'De {fromM} m à {toM} m, la colonne {string} a {insideMm} mm à l’intérieur, dans un trou de {holeMm} mm.',
    why: 'Avec sa paroi elle est encore plus large, et n’a pas pu y entrer.',
    todo: 'Corriger le diamètre du trou ou du tube.',
  },
  'string.widerThanOuter': {
    title: 'Colonne plus large que celle qui l’entoure',
    sentence:
      'De {fromM} m à {toM} m, la colonne {string} a {outsideMm} mm de large dans la colonne {outer}, dont l’intérieur a {insideMm} mm.',
    why: 'Elle n’a pas pu y entrer ; on ne connaît pas d’espace annulaire ici.',
    todo: 'Corriger les diamètres et les parois, ou les profondeurs, des deux colonnes.',
  },
  'string.noRoomInOuter': {
    title: 'Pas de place d’une colonne dans l’autre',
    sentence:
      'De {fromM} m à {toM} m, la colonne {string}, notée {sizeMm} mm, se tient dans la colonne {outer}, notée {roomMm} mm : avec leurs parois, il ne reste pas de place.',
    why: 'Elle n’a pas pu y entrer ; l’une des deux est peut-être le même tube noté deux fois.',
    todo: 'Corriger les diamètres ou les profondeurs, ou supprimer la colonne qui n’a pas été posée.',
  },
  'screen.noStratum': {
    title: 'Crépine là où la coupe se tait',
    sentence:
      'Colonne {string} : de {fromM} m à {toM} m, une crépine se tient là où la coupe ne dit rien.',
    why: 'On ne peut pas juger si la crépine se tient dans un terrain aquifère.',
    todo: 'Compléter la coupe, ou vérifier les profondeurs de la crépine.',
  },
  'screen.aboveGround': {
    title: 'Crépine au-dessus du sol',
    sentence: 'Colonne {string} : une crépine dépasse du sol, jusqu’à {fromM} m.',
    why: 'Des fentes hors sol laissent entrer l’eau de surface ; plus probablement, le décompte est faux.',
    todo: 'Vérifier le décompte et la position de la colonne.',
  },
};
