import type { Centimetres } from './centimetres.ts';
import { neededCm, type Problem } from './problem.ts';

/** By what a completion is sought; the fewest cuts are sought among those of the first. */
export const aims = ['safest', 'mostProductive'] as const;
export type Aim = (typeof aims)[number];

/**
 * How good screens are, the most important first; more is better in each. The first two speak of
 * the ground, in centimetres.
 */
export type Criteria = readonly [number, number, number, number];

/** Writes the criteria of a slotted stretch with its open area; called millions of times. */
export type Judge = (
  topCm: Centimetres,
  footCm: Centimetres,
  openCm2: number,
  into: number[],
) => void;

/**
 * The safest: the screen that is needed, the least outside good ground, its top as deep as can
 * be, and the largest open area.
 */
function safest(problem: Problem): Judge {
  const needCm = neededCm(problem);
  const { goodCm } = problem.ground;
  return (topCm, footCm, openCm2, into) => {
    const good = goodCm(topCm, footCm);
    into[0] = Math.min(good, needCm);
    into[1] = good - (footCm - topCm);
    into[2] = topCm;
    into[3] = openCm2;
  };
}

/**
 * The most productive: the most screen in good ground under the pumping level, the least elsewhere,
 * the largest open area, its top as deep as can be.
 */
function mostProductive({ ground, pumpingCm, limits }: Problem): Judge {
  const levelCm = pumpingCm + Math.max(limits.underPumpingCm, 0);
  return (topCm, footCm, openCm2, into) => {
    const counted = ground.goodCm(Math.max(topCm, levelCm), footCm);
    into[0] = counted;
    into[1] = counted - (footCm - topCm);
    into[2] = openCm2;
    into[3] = topCm;
  };
}

export function judgesOf(problem: Problem): Readonly<Record<Aim, Judge>> {
  return { safest: safest(problem), mostProductive: mostProductive(problem) };
}

/** Open areas that differ by less are alike: square centimetres. */
const alike = 1e-6;

/** Above 0 where the first is better, below 0 where the other is. */
export function compare(one: readonly number[], other: readonly number[]): number {
  for (let at = 0; at < one.length; at += 1) {
    const more = one[at]! - other[at]!;
    if (more > alike || more < -alike) return more;
  }
  return 0;
}
