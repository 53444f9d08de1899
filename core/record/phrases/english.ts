/**
 * What a trouble says, and the phrases that its places are filled with, in English. `{name}` stands
 * for a value. A code that another language lacks does not compile.
 */
export const english = {
  trouble: '{place}: {says}',
  record: 'record',

  missing: 'nothing stands here; {remedy}',
  null: 'null is no value; leave the field out where not known, or {remedy}',
  wrongKind: '{found} is not {kind}; {remedy}',
  unknownWord: '{found} is not a known word; {remedy}',
  unreadable: '{found} cannot be read; {remedy}',
  tooShort: '{found} is too short; {remedy}',
  tooLong: '{found} is too long; {remedy}',
  tooSmall: '{found} is less than {limit}; {remedy}',
  tooBig: '{found} is more than {limit}; {remedy}',
  misspelledKey: 'no such field; did you mean {meant}?',

  lessThan: '{figure} is less than {other} {otherFigure}',
  above: '{figure} is above {other} {otherFigure}',
  finerThan: '{figure} is finer than {other} {otherFigure}',
  before: '{at} is before {other} {otherAt}',
  noStringInside: '{around} names a string, yet the fill has none inside',

  notJson: 'cannot be written as JSON; give the record as plain JSON',
  noVersion: '{found} is no version; write a whole number, as in {current}',
  notARecord: '{found} is not a record; give a group of fields, as in { "log": [] }',
  stopped: '{reason}; bringing it to version {version} ({name}) stopped there',

  list: 'a list of {count}',
  group: 'a group of fields',

  write: 'write {what}',
  meantWord: 'did you mean "{meant}"?',
  oneOf: 'write one of {words}',
  oneOfMany: 'write one of the {count} known words, such as {words}',
  another: 'another',

  kindNumber: 'a number',
  kindInt: 'a whole number',
  kindString: 'text',
  kindBoolean: 'true or false',
  kindArray: 'a list',
  kindTuple: 'a pair of numbers',
  kindObject: 'a group of fields',
  kindDate: 'a day of the calendar',
  kindDatetime: 'a moment',
  kindUuid: 'an id (UUID)',
  kindOther: 'what belongs here',

  hintText: 'text',
  hintDepth: 'metres below ground, as in 12.5',
  hintMetres: 'metres, as in 2.85',
  hintSignedMetres: 'metres, as in 6.42',
  hintMillimetres: 'millimetres, as in 125',
  hintAmount: 'a number from 0 up, as in 2.5',
  hintPercent: 'a number from 0 to 100',
  hintDegrees: 'degrees from {from} to {to}, as in 12.3456',
  hintCount: 'a whole number, as in 3',
  hintFlag: 'true or false',
  hintId: 'a UUID of 32 hexadecimal digits, or leave it out',
  hintDay: 'year, month and day, as in 2026-03-14',
  hintMoment: 'day, time and offset, as in 2026-03-14T09:30+01:00',
} as const;
