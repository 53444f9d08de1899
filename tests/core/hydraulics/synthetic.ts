import { seededRandom, type Random } from '../../../core/base/random.ts';
import { impulsesOf } from '../../../core/hydraulics/ratesOverTime.ts';
import type { RateChange } from '../../../core/hydraulics/results.ts';
import { wellFunction } from '../../../core/hydraulics/special/wellFunction.ts';

/** An ideal aquifer, and how far away it is read. */
export interface Ideal {
  readonly T: number;
  readonly S: number;
  readonly r: number;
}

/** Drawdown of Theis 1935 with its rates superposed; minutes since pumping began. */
export function drawdownOf({ T, S, r }: Ideal, rates: readonly RateChange[], minutes: number) {
  return impulsesOf(rates)
    .filter(({ fromMin }) => fromMin < minutes)
    .reduce((sum, { fromMin, byM3d }) => {
      const days = (minutes - fromMin) / 1440;
      return sum + (byM3d / (4 * Math.PI * T)) * wellFunction((r * r * S) / (4 * T * days));
    }, 0);
}

/** Minutes evenly apart in log time, from 1 on. */
export function logMinutes(to: number, count: number): number[] {
  return Array.from({ length: count }, (_, at) => to ** (at / (count - 1)));
}

/** Normal noise of standard deviation 1, by Box and Muller. */
export function normal(random: Random): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

export { seededRandom };
