import type { Quantity, QuantityId, QuantityInput } from '../quantity.ts';
import { sacksOf, sumOf } from '../reckon.ts';

/** The mass of a sack that sacks were counted by. */
export function sackIn({ inputs }: Quantity): QuantityInput | undefined {
  return inputs.find(({ symbol }) => symbol === 's');
}

/**
 * Whole sacks of all zones: of the whole mass where all sacks are alike, since what is left in one
 * goes into the next zone; else the sum of the zones' own.
 */
export function sacksInAll(
  id: QuantityId,
  mass: Quantity | undefined,
  byZone: readonly Quantity[],
): Quantity | undefined {
  const sacks = byZone.flatMap((one) => sackIn(one) ?? []);
  const [first] = sacks;
  return first && sacks.every(({ value }) => value === first.value)
    ? sacksOf(id, mass, first)
    : sumOf(id, byZone);
}
