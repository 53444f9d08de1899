import type { FindingCode, FindingText } from './texts.ts';

type WaterCode = Extract<FindingCode, `level.${string}` | `strike.${string}` | `pump.${string}`>;

/** Levels, strikes and the pump. */
export const frenchWater: Record<WaterCode, FindingText> = {
  'level.noStickUp': {
    title: 'Niveau impossible à ramener au sol',
    sentence:
      'Un niveau a été lu {readM} m sous le haut du tubage, mais la hauteur de ce haut n’est pas connue ; il est laissé de côté.',
    why: 'Des niveaux de repères différents ne peuvent pas être comparés.',
    todo: 'Écrire la hauteur du haut du tubage au-dessus du sol, ou les pièces avec leur position.',
  },
  'level.stickUpAssumed': {
    title: 'Niveau ramené avec une hauteur supposée',
    sentence:
      'Un niveau lu {readM} m sous le haut du tubage est dessiné à {fromM} m sous le sol ; le haut du tubage est supposé à {stickUpM} m au-dessus du sol.',
    why: 'Le niveau est faux d’autant que la hauteur supposée.',
    todo: 'Mesurer la hauteur du haut du tubage au-dessus du sol et l’écrire.',
  },
  'level.aboveGround': {
    title: 'Eau au-dessus du sol',
    sentence: 'Un niveau d’eau se tient {heightM} m au-dessus du sol.',
    why: 'Juste pour un forage jaillissant ; sinon la lecture ou son repère est faux.',
    todo: 'Vérifier la lecture, et si elle part du sol ou du haut du tubage.',
  },
  'level.belowHole': {
    title: 'Eau sous le fond du trou',
    sentence:
      'Un niveau d’eau de {levelM} m se trouve sous le fond du trou, profond de {depthM} m.',
    why: 'Une sonde ne peut pas trouver d’eau sous le fond ; l’un des deux chiffres est faux.',
    todo: 'Corriger la lecture, son repère ou la profondeur du trou.',
  },
  'strike.aboveGround': {
    title: 'Venue d’eau au-dessus du sol',
    sentence: 'Une venue d’eau est notée {heightM} m au-dessus du sol.',
    why: 'Les profondeurs se comptent vers le bas depuis le sol.',
    todo: 'Écrire la profondeur en chiffre positif.',
  },
  'strike.belowHole': {
    title: 'Venue d’eau sous le fond du trou',
    sentence:
      'Une venue d’eau à {strikeM} m se trouve sous le fond du trou, profond de {depthM} m.',
    why: 'De l’eau n’a pas pu être trouvée sous le fond ; l’une des deux profondeurs est fausse.',
    todo: 'Corriger la profondeur de la venue ou du trou.',
  },
  'strike.riseBelow': {
    title: 'Eau descendue après la venue',
    sentence: 'L’eau trouvée à {strikeM} m serait remontée à {riseM} m, ce qui est plus profond.',
    why: 'Après une venue, le niveau se tient à sa profondeur ou plus haut.',
    todo: 'Écrire le niveau comme profondeur sous le sol, non comme hauteur de remontée.',
  },
  'pump.aboveGround': {
    title: 'Aspiration de la pompe au-dessus du sol',
    sentence: 'L’aspiration de la pompe est notée {heightM} m au-dessus du sol.',
    why: 'Les profondeurs se comptent vers le bas depuis le sol.',
    todo: 'Écrire la profondeur en chiffre positif.',
  },
  'pump.belowHole': {
    title: 'Aspiration de la pompe sous le fond',
    sentence:
      'L’aspiration de la pompe, à {intakeM} m, se trouve sous le fond du trou, profond de {depthM} m.',
    why: 'L’une des deux profondeurs est fausse.',
    todo: 'Corriger la profondeur de l’aspiration ou du trou.',
  },
  'pump.belowString': {
    title: 'Aspiration de la pompe sous la colonne',
    sentence:
      'L’aspiration de la pompe, à {intakeM} m, se trouve sous la colonne {string}, fermée à {bottomM} m.',
    why: 'Une pompe ne passe pas un bouchon de fond ; l’une des deux profondeurs est fausse.',
    todo: 'Corriger la profondeur de l’aspiration, ou les pièces et la position de la colonne.',
  },
  'pump.inOpenHole': {
    title: 'Aspiration de la pompe sous le tubage',
    sentence:
      'L’aspiration de la pompe, à {intakeM} m, pend dans le trou nu, sous la colonne qui finit à {bottomM} m.',
    why: 'Des pierres de la paroi peuvent coincer une pompe dans un trou nu.',
    todo: 'Vérifier que c’est voulu.',
  },
  'pump.inSump': {
    title: 'Aspiration dans le tube à sédiments',
    sentence: 'L’aspiration de la pompe, à {intakeM} m, pend dans le tube à sédiments.',
    why: 'Ce tube recueille sable et limon, et la pompe les aspirerait.',
    todo: 'Vérifier la profondeur de l’aspiration et le décompte des pièces.',
  },
  'pump.cylinderBelowIntake': {
    title: 'Pompe à l’envers',
    sentence:
      'Le haut du cylindre de la pompe, à {cylinderTopM} m, se trouve sous son aspiration, à {intakeM} m.',
    why: 'L’aspiration est au bout inférieur de la pompe.',
    todo: 'Intervertir les deux profondeurs, ou corriger celle qui est fausse.',
  },
  'pump.widerThanCasing': {
    title: 'Pompe plus large que le tubage',
    sentence:
      'La pompe a {bodyMm} mm de large ; la colonne {string} a {insideMm} mm à l’intérieur au plus étroit du passage.',
    why: 'Elle n’a pas pu y entrer ; l’une des mesures est fausse.',
    todo: 'Corriger le diamètre de la pompe, ou les diamètres et les parois de la colonne.',
  },
};
