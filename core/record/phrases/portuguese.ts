import type { PhraseTexts } from './phrase.ts';

/** The phrases of troubles in Portuguese. */
export const portuguese: PhraseTexts = {
  trouble: '{place}: {says}',
  record: 'ficha',

  missing: 'nada está escrito aqui; {remedy}',
  null: 'null não é um valor; omitir o campo se não é conhecido, ou {remedy}',
  wrongKind: '{found} não é {kind}; {remedy}',
  unknownWord: '{found} não é uma palavra conhecida; {remedy}',
  unreadable: '{found} não se consegue ler; {remedy}',
  tooShort: '{found}: demasiado curto; {remedy}',
  tooLong: '{found}: demasiado longo; {remedy}',
  tooSmall: '{found} é menos do que {limit}; {remedy}',
  tooBig: '{found} é mais do que {limit}; {remedy}',
  misspelledKey: 'não há campo com este nome; será {meant}?',

  lessThan: '{figure} é menos do que {other} {otherFigure}',
  above: '{figure} fica acima de {other} {otherFigure}',
  finerThan: '{figure} é mais fino do que {other} {otherFigure}',
  before: '{at} é antes de {other} {otherAt}',
  noStringInside: '{around} nomeia uma coluna, mas o enchimento está registado sem nenhuma dentro',

  notJson: 'impossível de escrever em JSON; dar a ficha em simples JSON',
  noVersion: '{found} não é uma versão; escrever um número inteiro, por exemplo {current}',
  notARecord: '{found} não é uma ficha; dar um grupo de campos, como { "log": [] }',
  stopped: '{reason}; a passagem à versão {version} ({name}) parou aí',

  list: 'uma lista de {count}',
  group: 'um grupo de campos',

  write: 'escrever {what}',
  meantWord: 'será «{meant}»?',
  oneOf: 'escrever uma de {words}',
  oneOfMany: 'escrever uma das {count} palavras conhecidas, como {words}',
  another: 'outra coisa',

  kindNumber: 'um número',
  kindInt: 'um número inteiro',
  kindString: 'texto',
  kindBoolean: 'true ou false',
  kindArray: 'uma lista',
  kindTuple: 'um par de números',
  kindObject: 'um grupo de campos',
  kindDate: 'um dia do calendário',
  kindDatetime: 'um momento',
  kindUuid: 'um identificador (UUID)',
  kindOther: 'o que aqui pertence',

  hintText: 'texto',
  hintDepth: 'metros abaixo do solo, por exemplo 12,5',
  hintMetres: 'metros, por exemplo 2,85',
  hintSignedMetres: 'metros, por exemplo 6,42',
  hintMillimetres: 'milímetros, por exemplo 125',
  hintAmount: 'um número a partir de 0, por exemplo 2,5',
  hintPercent: 'um número de 0 a 100',
  hintDegrees: 'graus de {from} a {to}, por exemplo 12,3456',
  hintCount: 'um número inteiro, por exemplo 3',
  hintFlag: 'true ou false',
  hintId: 'um UUID de 32 dígitos hexadecimais, ou omiti-lo',
  hintDay: 'ano, mês e dia, por exemplo 2026-03-14',
  hintMoment: 'dia, hora e diferença horária, por exemplo 2026-03-14T09:30+01:00',
};
