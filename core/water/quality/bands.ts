import type { Band, BandId, HeldParameter } from '../guidelines/guidelineSet.ts';
import type { Reading } from '../results.ts';

/** The band that a figure stands in. */
export function bandAt(list: readonly Band[], value: number): BandId | undefined {
  return list.findLast(({ from }) => value >= from)?.id;
}

/**
 * The band of a reading. One below a detection limit has a band only where all below that limit
 * is one band.
 */
export function bandOf({ bands }: HeldParameter, reading: Reading): BandId | undefined {
  if (!bands || reading.value === undefined) return undefined;
  const { value, below } = reading;
  if (!below) return bandAt(bands.list, value);
  const [lowest, second] = bands.list;
  return lowest && (!second || value <= second.from) ? lowest.id : undefined;
}
