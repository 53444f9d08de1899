/** So little above a whole number is the rounding of doubles, not a need. */
const wholeNudge = 1e-9;

/** How many whole pieces reach a length. */
export function wholePieces(lengthM: number, eachM: number): number {
  return Math.ceil(lengthM / eachM - wholeNudge);
}
