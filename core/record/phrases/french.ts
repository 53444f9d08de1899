import type { PhraseTexts } from './phrase.ts';

/** The phrases of troubles in French. */
export const french: PhraseTexts = {
  trouble: '{place} : {says}',
  record: 'fiche',

  missing: 'rien n’est écrit ici ; {remedy}',
  null: 'null n’est pas une valeur ; omettre le champ s’il n’est pas connu, ou {remedy}',
  wrongKind: '{found} n’est pas {kind} ; {remedy}',
  unknownWord: '{found} n’est pas un mot connu ; {remedy}',
  unreadable: '{found} ne peut pas être lu ; {remedy}',
  tooShort: '{found} : trop court ; {remedy}',
  tooLong: '{found} : trop long ; {remedy}',
  tooSmall: '{found} est moins que {limit} ; {remedy}',
  tooBig: '{found} est plus que {limit} ; {remedy}',
  misspelledKey: 'pas de champ de ce nom ; est-ce {meant} ?',

  lessThan: '{figure} est moins que {other} {otherFigure}',
  above: '{figure} est plus haut que {other} {otherFigure}',
  finerThan: '{figure} est plus fin que {other} {otherFigure}',
  before: '{at} est avant {other} {otherAt}',
  noStringInside:
    '{around} nomme une colonne, mais le remplissage est noté comme n’en contenant aucune',

  notJson: 'impossible à écrire en JSON ; donner la fiche en simple JSON',
  noVersion: '{found} n’est pas une version ; écrire un nombre entier, par exemple {current}',
  notARecord: '{found} n’est pas une fiche ; donner un groupe de champs, comme { "log": [] }',
  stopped: '{reason} ; le passage à la version {version} ({name}) s’y est arrêté',

  list: 'une liste de {count}',
  group: 'un groupe de champs',

  write: 'écrire {what}',
  meantWord: 'est-ce « {meant} » ?',
  oneOf: 'écrire l’un de {words}',
  oneOfMany: 'écrire l’un des {count} mots connus, comme {words}',
  another: 'autre chose',

  kindNumber: 'un nombre',
  kindInt: 'un nombre entier',
  kindString: 'du texte',
  kindBoolean: 'true ou false',
  kindArray: 'une liste',
  kindTuple: 'une paire de nombres',
  kindObject: 'un groupe de champs',
  kindDate: 'un jour du calendrier',
  kindDatetime: 'un moment',
  kindUuid: 'un identifiant (UUID)',
  kindOther: 'ce qui convient ici',

  hintText: 'du texte',
  hintDepth: 'des mètres sous le sol, par exemple 12,5',
  hintMetres: 'des mètres, par exemple 2,85',
  hintSignedMetres: 'des mètres, par exemple 6,42',
  hintMillimetres: 'des millimètres, par exemple 125',
  hintAmount: 'un nombre à partir de 0, par exemple 2,5',
  hintPercent: 'un nombre de 0 à 100',
  hintDegrees: 'des degrés de {from} à {to}, par exemple 12,3456',
  hintCount: 'un nombre entier, par exemple 3',
  hintFlag: 'true ou false',
  hintId: 'un UUID de 32 chiffres hexadécimaux, ou l’omettre',
  hintDay: 'année, mois et jour, par exemple 2026-03-14',
  hintMoment: 'jour, heure et décalage, par exemple 2026-03-14T09:30+01:00',
};
