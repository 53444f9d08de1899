/**
 * Units of length that a table may use, in metres. The international foot and inch are exact by
 * the yard and pound agreement of 1959 (1 ft = 0.3048 m, 1 in = 25.4 mm); the U.S. survey foot,
 * in which older heights stand, is 1200/3937 m (NIST SP 811, appendix B.6).
 */
const metresIn = {
  m: 1,
  cm: 0.01,
  mm: 0.001,
  ft: 0.3048,
  ftUS: 1200 / 3937,
  in: 0.0254,
} as const;

export type LengthUnit = keyof typeof metresIn;
export const lengthUnits = Object.keys(metresIn) as [LengthUnit, ...LengthUnit[]];

/** Ways to write a unit in a cell, in small letters. */
const spellings: Readonly<Record<string, LengthUnit>> = {
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  foot: 'ft',
  feet: 'ft',
  ftus: 'ftUS',
  inch: 'in',
  inches: 'in',
};

/** The unit that a cell names; undefined where it names none that is known. */
export function lengthUnitOf(text: string): LengthUnit | undefined {
  const small = text.toLowerCase();
  return spellings[small] ?? lengthUnits.find((unit) => unit === small);
}

/** A length in a unit, brought to metres or millimetres. */
export function convertLength(value: number, from: LengthUnit, to: 'm' | 'mm'): number {
  if (from === to) return value;
  // Twelve figures keep every published digit and drop the noise of binary fractions.
  return Number(((value * metresIn[from]) / metresIn[to]).toPrecision(12));
}
