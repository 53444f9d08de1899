/** Numbers from 0 up to, not including, 1. */
export type Random = () => number;

/**
 * A generator that gives the same numbers from the same seed on every machine.
 * Source: the mulberry32 generator, in the public domain.
 */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
