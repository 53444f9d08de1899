import type { Random } from '../../../core/base/random.ts';
import type { Material } from '../../../core/record/materials.ts';

/** Eighths of a spread: the least, seven between, the most. */
export type Eighths = readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
];

/**
 * Depths of wells, metres, and intervals of their logs.
 * Source: the 37 driller's logs of tests/data/ngis-lithology, counted.
 */
export const depths: Eighths = [9.1, 21.7, 32, 38.3, 49.5, 56.6, 60.5, 68.8, 115];
export const intervalCounts: Eighths = [2, 3, 4, 4.2, 6, 8.8, 13, 20.5, 36];

/**
 * How often each principal material stands in a log. Source: the coded rows of the same logs
 * (clay 164, gravel 47, sand 38, shale 19, topsoil 17, slate 4, silt 4, conglomerate 3, granite 2,
 * sandstone 2, basalt 2); laterite, saprolite and gneiss are added for ground as in the demo wells.
 */
export const materialWeights: Readonly<Partial<Record<Material, number>>> = {
  clay: 164,
  gravel: 47,
  sand: 38,
  shale: 19,
  silt: 4,
  slate: 4,
  conglomerate: 3,
  granite: 2,
  sandstone: 2,
  basalt: 2,
  laterite: 20,
  saprolite: 12,
  gneiss: 6,
};

/**
 * Yields of wells that are not dry, cubic metres an hour, and lengths of screen, metres: common
 * practice for village wells between a hand pump's and a small electric pump's.
 */
export const yields: Eighths = [0.3, 0.7, 0.9, 1.2, 1.6, 2.4, 3.6, 6, 18];
export const screenLengths: Eighths = [1.5, 3, 3, 5.8, 6, 6, 8.7, 9, 18];

/** A value of the spread, straight between its eighths. */
export function drawnFrom(spread: Eighths, random: Random): number {
  const place = random() * (spread.length - 1);
  const below = Math.floor(place);
  const [low, high] = [spread[below]!, spread[below + 1]!];
  return low + (place - below) * (high - low);
}

/** One of the values, each as often as its weight says. */
export function weighed<T extends string>(
  weights: Readonly<Partial<Record<T, number>>>,
  random: Random,
): T {
  const entries = Object.entries(weights) as [T, number][];
  let left = random() * entries.reduce((sum, [, weight]) => sum + weight, 0);
  for (const [value, weight] of entries) {
    left -= weight;
    if (left < 0) return value;
  }
  return entries.at(-1)![0];
}

/** To so many decimals, as a tape or a meter is read. */
export function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}

/** One of the values, all alike often. */
export function oneOf<T>(values: readonly T[], random: Random): T {
  return values[Math.floor(random() * values.length)]!;
}
