import type { FindingCode, FindingText } from './texts.ts';

type StringCode = Extract<FindingCode, `string.${string}` | `screen.${string}`>;

/** Casing strings and their screens. */
export const englishStrings: Record<StringCode, FindingText> = {
  'string.noPieces': {
    title: 'String cannot be placed',
    sentence: 'String {string} has no piece whose length is known; it is left out.',
    why: 'Depths of casing and screen come from the lengths in the tally.',
    todo: 'Write the tally from the bottom up, with the length of each piece.',
  },
  'string.noLength': {
    title: 'Piece without length',
    sentence: 'String {string}: a {piece} has no length; it is left out.',
    why: 'Every piece above it then stands too deep, or the top of the string too low.',
    todo: 'Write the length of one piece, end to end with its bell.',
  },
  'string.noDiameter': {
    title: 'Outside diameter not recorded',
    sentence:
      'Pieces of string {string} without outside diameter, from {fromM} m to {toM} m: {count} of {of}.',
    why: 'The annulus around it has no volume without it.',
    todo: 'Write the outside diameter in millimetres.',
  },
  'string.noWall': {
    title: 'Wall thickness not recorded',
    sentence: 'Pieces of string {string} without wall or inside diameter: {count} of {of}.',
    why: 'The inside diameter tells which pump goes in and how much water the well holds.',
    todo: 'Write the wall thickness in millimetres as printed on the pipe, or the inside diameter.',
  },
  'string.wallTooThick': {
    title: 'Wall thicker than the pipe',
    sentence:
      'String {string}: a {piece} of {outsideMm} mm has a wall of {wallMm} mm, which leaves no inside.',
    why: 'Twice the wall must be less than the outside diameter.',
    todo: 'Check whether the wall was written in another unit, or a diameter in its place.',
  },
  'string.insideTooWide': {
    title: 'Inside wider than the pipe',
    sentence:
      'String {string}: a {piece} of {outsideMm} mm outside is recorded as {insideMm} mm inside; the inside is passed over.',
    why: 'A pipe is narrower inside than outside.',
    todo: 'Check whether the two diameters were swapped.',
  },
  'string.sizesDisagree': {
    title: 'Outside, wall and inside disagree',
    sentence:
      'String {string}: a {piece} of {outsideMm} mm with a wall of {wallMm} mm is recorded as {insideMm} mm inside; the inside is taken as recorded.',
    why: 'The inside is the outside less twice the wall; one of the three is wrong.',
    todo: 'Correct the one that is wrong, or leave out the one that was not measured.',
  },
  'string.countTooHigh': {
    title: 'Too many pieces alike',
    sentence: 'String {string}: {count} pieces alike ({piece}) are recorded; {most} are taken.',
    why: 'No well holds so many; a length may stand where the count belongs.',
    todo: 'Correct the count.',
  },
  'string.insertionTooLong': {
    title: 'Joint longer than its piece',
    sentence:
      'String {string}: a {piece} goes {insertionM} m into the piece below, as far as one of the two is long; the joint is not deducted.',
    why: 'A joint is a short overlap; the tally is wrong without the true figure.',
    todo: 'Write the overlap of the joint in metres, as in 0.10.',
  },
  'string.centraliserOffPiece': {
    title: 'Centraliser off its piece',
    sentence:
      'String {string}: a centraliser is recorded {heightM} m above the lower end of a {piece} that is {lengthM} m long; it is left out.',
    why: 'Heights of centralisers are measured on their own piece.',
    todo: 'Write the height above the lower end of that piece.',
  },
  'string.reducerOneSize': {
    title: 'Reducer with one diameter',
    sentence: 'String {string}: the upper diameter of a reducer is not recorded.',
    why: 'It is drawn as a straight pipe, and the annulus around it is not exact.',
    todo: 'Write the outside diameter at its upper end.',
  },
  'string.reducerMisfit': {
    title: 'Reducer does not fit',
    sentence:
      'String {string}: at {fromM} m a reducer’s end of {reducerMm} mm meets a pipe of {neighbourMm} mm.',
    why: 'A reducer ends in the diameters of its neighbours; it may stand upside down.',
    todo: 'Check the diameters, and that the tally is written from the bottom up.',
  },
  'string.stepWithoutReducer': {
    title: 'Diameter changes without a reducer',
    sentence:
      'String {string}: at {fromM} m a pipe of {upperMm} mm stands on one of {lowerMm} mm without a reducer.',
    why: 'A reducer may be missing in the tally, and its length with it.',
    todo: 'Write the reducer, or correct the diameter.',
  },
  'string.placedAtHoleBottom': {
    title: 'Setting of the string not recorded',
    sentence:
      'Nothing tells where string {string} stands; it is drawn standing on the bottom of the hole at {bottomM} m.',
    why: 'All depths of screen and casing hang on this one figure.',
    todo: 'Write the depth of its lower end, or how far its top stands above ground.',
  },
  'string.placedAtGround': {
    title: 'Setting of the string not recorded',
    sentence: 'Nothing tells where string {string} stands; it is drawn from ground level down.',
    why: 'All depths of screen and casing hang on this one figure.',
    todo: 'Write the depth of its lower end, or how far its top stands above ground.',
  },
  'string.measuredElsewhere': {
    title: 'Measured depth and tally differ',
    sentence:
      'String {string}: its lower end was measured at {measuredM} m, the tally puts it at {tallyBottomM} m ({differenceM} m apart).',
    why: 'A piece or a joint may be missing in the tally, or the string hangs or has sunk.',
    todo: 'Count the pieces and joints again, and check the setting.',
  },
  'string.stickUpElsewhere': {
    title: 'Casing height and tally differ',
    sentence:
      'The casing top was measured {measuredM} m above ground, the tally of string {string} puts it at {stickUpM} m.',
    why: 'Either the casing was cut afterwards, or tally and setting do not agree.',
    todo: 'Write the cut piece with the length left, or correct the setting.',
  },
  'string.belowHole': {
    title: 'String deeper than the hole',
    sentence: 'String {string} reaches {bottomM} m, but the hole is {depthM} m deep.',
    why: 'A string cannot stand below the bottom of the hole.',
    todo: 'Check the tally, the setting and the depth reached.',
  },
  'string.widerThanHole': {
    title: 'String wider than the hole',
    sentence:
      'From {fromM} m to {toM} m string {string} is {outsideMm} mm wide in a hole of {holeMm} mm.',
    why: 'It could not have gone in; no annulus can be told here.',
    todo: 'Correct the diameter of the hole or of the pipe.',
  },
  'string.insideWiderThanHole': {
    title: 'String wider inside than the hole',
    sentence:
      'From {fromM} m to {toM} m string {string} is {insideMm} mm inside, in a hole of {holeMm} mm.',
    why: 'With its wall it is wider still, and could not have gone in.',
    todo: 'Correct the diameter of the hole or of the pipe.',
  },
  'string.widerThanOuter': {
    title: 'String wider than the one around it',
    sentence:
      'From {fromM} m to {toM} m string {string} is {outsideMm} mm wide within string {outer}, whose inside is {insideMm} mm.',
    why: 'It could not have gone in; no annulus can be told here.',
    todo: 'Correct the diameters and walls, or the depths, of the two strings.',
  },
  'string.noRoomInOuter': {
    title: 'No room for one string in the other',
    sentence:
      'From {fromM} m to {toM} m string {string}, recorded as {sizeMm} mm, stands within string {outer}, recorded as {roomMm} mm: with their walls that leaves no room.',
    why: 'It could not have gone in; one of the two may be the same pipe recorded twice.',
    todo: 'Correct the diameters or the depths, or remove the string that was not set.',
  },
  'screen.noStratum': {
    title: 'Screen where the log is silent',
    sentence:
      'String {string}: from {fromM} m to {toM} m a screen stands where the log says nothing.',
    why: 'Whether the screen stands in water-bearing ground cannot be judged.',
    todo: 'Complete the log, or check the depths of the screen.',
  },
  'screen.aboveGround': {
    title: 'Screen above ground',
    sentence: 'String {string}: a screen reaches above ground, to {fromM} m.',
    why: 'Slots above ground let surface water into the well; more likely the tally is wrong.',
    todo: 'Check the tally and the setting of the string.',
  },
};
