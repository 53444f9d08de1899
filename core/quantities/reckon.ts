import type { Source } from '../practice/practice.ts';
import { counted, fromQuantity } from './inputs.ts';
import {
  quantityKinds,
  type Missing,
  type PipeSize,
  type Quantity,
  type QuantityId,
  type QuantityInput,
  type QuantityZone,
} from './quantity.ts';
import { sources } from './sources.ts';

/** What came of a group. */
export interface Reckoned {
  readonly quantities: readonly Quantity[];
  readonly missing: readonly Missing[];
}

/** A group that a well does not take. */
export const nothing: Reckoned = { quantities: [], missing: [] };

/** How a value was found. */
export interface Reckoning {
  readonly formula: string;
  readonly inputs: readonly QuantityInput[];
  readonly source: Source;
}

/** What a quantity speaks of, where it is not the whole well. */
export interface Spoken {
  readonly zone?: QuantityZone;
  readonly pipe?: PipeSize;
}

/** A quantity, or none where the value is not known or is no amount of anything. */
export function reckon(
  id: QuantityId,
  value: number | undefined,
  { formula, inputs, source }: Reckoning,
  of: Spoken = {},
): Quantity | undefined {
  if (value === undefined || !Number.isFinite(value) || value < 0) return undefined;
  return { id, value, unit: quantityKinds[id].unit, formula, inputs, source, ...of };
}

/** What a sum writes: litres as V, masses as m, lengths as L, numbers as n. */
const letters = {
  litres: 'V',
  kg: 'm',
  g: 'm',
  m: 'L',
  sacks: 'n',
  pieces: 'n',
  trips: 'n',
} as const;

/** The sum of quantities of one unit; none where there are none. */
export function sumOf(id: QuantityId, parts: readonly Quantity[]): Quantity | undefined {
  if (parts.length === 0) return undefined;
  const letter = letters[quantityKinds[id].unit];
  return reckon(
    id,
    parts.reduce((sum, { value }) => sum + value, 0),
    {
      formula: `${letter} = Σ ${letter}ᵢ`,
      inputs: parts.map((part, at) => fromQuantity(counted(letter, at + 1), part)),
      source: sources.geometry,
    },
  );
}

/** So little above a whole number is the rounding of doubles, not a need. */
const wholeNudge = 1e-9;

/** How many whole ones hold an amount. */
export function wholes(amount: number, each: number): number {
  return Math.ceil(amount / each - wholeNudge);
}

/** Whole sacks that hold a mass; `sack` is the mass of one. */
export function sacksOf(
  id: QuantityId,
  mass: Quantity | undefined,
  sack: QuantityInput,
  of: Spoken = {},
): Quantity | undefined {
  if (!mass) return undefined;
  return reckon(
    id,
    wholes(mass.value, sack.value),
    {
      formula: 'n ≥ m / s',
      inputs: [fromQuantity('m', mass), { ...sack, symbol: 's' }],
      source: sources.common,
    },
    of,
  );
}

/** Those that are known. */
export function told(quantities: readonly (Quantity | undefined)[]): Quantity[] {
  return quantities.filter((one) => one !== undefined);
}

function sameMissing(one: Missing, other: Missing): boolean {
  return (
    one.what === other.what &&
    one.path === other.path &&
    one.fromM === other.fromM &&
    one.toM === other.toM
  );
}

/** Each thing missed, once. */
export function eachOnce(missing: readonly Missing[]): Missing[] {
  return missing.filter((one, at) => missing.findIndex((other) => sameMissing(one, other)) === at);
}

/** The quantity of an id that speaks of the whole well. */
export function wholeOf({ quantities }: Reckoned, id: QuantityId): Quantity | undefined {
  return quantities.find((one) => one.id === id);
}
