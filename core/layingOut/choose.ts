import type { Centimetres } from './centimetres.ts';
import { compare, type Aim } from './score.ts';
import type { Found } from './search.ts';

/** A further cut has to be worth so much: a pipe cut is work, and its rest is lost. */
export const worthCutCm: Centimetres = 50;

function cutsOf({ screenCuts, plainCuts }: Found): number {
  return screenCuts + plainCuts;
}

/** What the screens gain from the ground, in centimetres. */
function fromGround({ aim, criteria }: Found): Centimetres {
  return aim === 'safest' ? criteria[0] + criteria[1] : criteria[0];
}

function bestOf(found: readonly Found[]): Found | undefined {
  return found.reduce<Found | undefined>(
    (held, one) => (held && compare(one.criteria, held.criteria) <= 0 ? held : one),
    undefined,
  );
}

/** Whether one with fewer cuts comes near enough to the best. */
function comesNear(one: Found, best: Found): boolean {
  const depth = one.aim === 'safest' ? best.criteria[2] - one.criteria[2] : 0;
  return fromGround(best) - fromGround(one) < worthCutCm && depth < worthCutCm;
}

/**
 * The best of an aim, without the cuts that are not worth their while. A screen is cut only for
 * ground; plain pipe also for depth.
 */
export function chooseFor(aim: Aim, found: readonly Found[]): Found | undefined {
  const ofAim = found.filter((one) => one.aim === aim);
  const [whole, cut] = [0, 1].map((cuts) => ofAim.filter(({ screenCuts }) => screenCuts === cuts));
  const [bestWhole, bestCut] = [bestOf(whole ?? []), bestOf(cut ?? [])];
  const isCutWorth =
    bestCut && (!bestWhole || fromGround(bestCut) - fromGround(bestWhole) >= worthCutCm);
  const [group, best] = isCutWorth ? [cut, bestCut] : [whole, bestWhole];
  if (!group || !best) return undefined;
  return group
    .filter((one) => comesNear(one, best))
    .reduce((held, one) => (one.plainCuts < held.plainCuts ? one : held), best);
}

/** The fewest cuts of all, a plain pipe cut sooner than a screen; of those alike the safest. */
export function chooseFewestCuts(found: readonly Found[]): Found | undefined {
  const safest = found.filter(({ aim }) => aim === 'safest');
  const fewest = Math.min(...safest.map(cutsOf));
  const few = safest.filter((one) => cutsOf(one) === fewest);
  const leastScreens = Math.min(...few.map(({ screenCuts }) => screenCuts));
  return bestOf(few.filter(({ screenCuts }) => screenCuts === leastScreens));
}
