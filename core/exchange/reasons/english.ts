/** Why something of a table or a record did not come in as it stands. `{name}` is for a value. */
export const english = {
  leftOut: '{says} Correct it and read the file again; the row was left out.',
  ofRecord: '{says}.',
  restComes: '{says}; the rest of the record comes in.',
  restOfWellComes: '{says}; the rest of the well comes in.',

  noColumn: 'The file has no column "{column}", so it was not read.',
  twoColumns: 'The file has two columns "{column}", so it was not read.',
  longCell: 'The cell holds more than {letters} letters.',
  raggedRow: 'The row has {cells} cells under {headings} headings.',
  noWell: 'The row names no well.',
  fileMissing: 'The mapping names {file}, which was not given.',
  fileUnnamed: 'The mapping does not name {file}, so it was not read.',
  saidOtherwise: 'Well "{well}" is described otherwise on line {line}, and that stands.',
  saidAlready: 'Well "{well}" has a row above already.',
  upsideDown: 'The lower end, {to} m, does not lie below the upper end, {from} m.',
  emptyCell: 'The cell is empty, and a row of {kind} needs its "{name}".',
  noPointNumber: '"{text}" is not a number with a decimal point.',
  noCommaNumber: '"{text}" is not a number with a decimal comma.',
  notWhole: '"{text}" is not a whole number.',
  noUnit: '"{written}" is not a unit of length; known are {units}.',
  notDay: '"{text}" is not a day written in the order {order}.',
  unknownWord: '"{text}" is not among the words that the mapping knows.',

  brokenJson:
    'The record that begins here is not whole JSON, so it was not read. Write the file again.',
} as const;
