import { intervalsOf } from '../model/strata.ts';
import type { Stratum, WellModel } from '../model/wellModel.ts';
import { conductanceOf, type Conductance } from '../practice/reading/ground.ts';
import { cmOf, type Centimetres } from './centimetres.ts';

/** What tells of the ground. */
type GroundRead = Pick<WellModel, 'strata' | 'strikes'>;

/** A stretch of ground. */
export interface Bed {
  readonly topCm: Centimetres;
  readonly footCm: Centimetres;
}

/** Ground that gives water as one: no bed in it is thick enough to hold water back. */
export interface Aquifer extends Bed {
  /** What parts it from the next aquifer above; absent where there is none above. */
  readonly roof?: Bed;
  /** What parts it from the next aquifer below; absent where the hole meets none below. */
  readonly floor?: Bed;
}

/** The ground of a hole by the centimetre. */
export interface Ground {
  readonly aquifers: readonly Aquifer[];
  /** Centimetres between two depths that conduct well. */
  goodCm(topCm: Centimetres, footCm: Centimetres): Centimetres;
  /** Centimetres between two depths that hold water back. */
  tightCm(topCm: Centimetres, footCm: Centimetres): Centimetres;
}

/**
 * Where drillers wrote two rows of one range, the better of them tells: water finds its way. A
 * water strike tells of ground, as of rock, that its description does not.
 */
function conductance(stratum: Stratum, strikes: WellModel['strikes']): Conductance {
  const all = intervalsOf(stratum).map(conductanceOf);
  if (all.includes('good')) return 'good';
  if (!all.includes('unknown')) return 'poor';
  const struck = strikes.some(({ depthM }) => depthM >= stratum.fromM && depthM < stratum.toM);
  return struck ? 'good' : 'unknown';
}

function byCentimetre({ strata, strikes }: GroundRead, depthCm: Centimetres): Conductance[] {
  const ground = Array<Conductance>(depthCm).fill('unknown');
  for (const stratum of strata)
    ground.fill(conductance(stratum, strikes), Math.max(0, cmOf(stratum.fromM)), cmOf(stratum.toM));
  return ground;
}

/** Stretches in which a test holds, from the ground down. */
function stretches(ground: readonly Conductance[], holds: (one: Conductance) => boolean): Bed[] {
  const beds: { topCm: Centimetres; footCm: Centimetres }[] = [];
  for (const [at, one] of ground.entries()) {
    if (!holds(one)) continue;
    const last = beds.at(-1);
    if (last?.footCm === at) last.footCm = at + 1;
    else beds.push({ topCm: at, footCm: at + 1 });
  }
  return beds;
}

/** The ground between aquitards, trimmed to what is not tight; without what gives no water. */
function between(
  aquitards: readonly Bed[],
  ground: readonly Conductance[],
  depthCm: Centimetres,
): Bed[] {
  const tops = [0, ...aquitards.map(({ footCm }) => footCm)];
  const feet = [...aquitards.map(({ topCm }) => topCm), depthCm];
  return tops.flatMap((topCm, at) => {
    const part = ground.slice(topCm, feet[at]);
    if (!part.includes('good')) return [];
    const first = part.findIndex((one) => one !== 'poor');
    const last = part.findLastIndex((one) => one !== 'poor');
    return [{ topCm: topCm + first, footCm: topCm + last + 1 }];
  });
}

/** Tells how much of a kind lies between two depths, from running sums. */
function lengthsOf(ground: readonly Conductance[], kind: Conductance) {
  const sums = new Int32Array(ground.length + 1);
  for (const [at, one] of ground.entries()) sums[at + 1] = sums[at]! + (one === kind ? 1 : 0);
  return (topCm: Centimetres, footCm: Centimetres): Centimetres =>
    footCm > topCm ? sums[footCm]! - sums[topCm]! : 0;
}

/** The aquitard between two aquifers; of several the nearest to the lower one. */
function parting(aquitards: readonly Bed[], upper: Bed | undefined, lower: Bed | undefined) {
  if (!upper || !lower) return undefined;
  return aquitards.findLast(({ topCm, footCm }) => topCm >= upper.footCm && footCm <= lower.topCm);
}

/**
 * Reads the log down to a depth. Beds that hold water back for `aquitardCm` or more part aquifers;
 * thinner ones are lenses in them. Where the log is silent the ground is unknown, and does not
 * hold back.
 */
export function readGround(
  model: GroundRead,
  depthCm: Centimetres,
  aquitardCm: Centimetres,
): Ground {
  const ground = byCentimetre(model, depthCm).slice(0, depthCm);
  const aquitards = stretches(ground, (one) => one === 'poor').filter(
    ({ topCm, footCm }) => footCm - topCm >= aquitardCm,
  );
  const beds = between(aquitards, ground, depthCm);
  return {
    aquifers: beds.map((bed, at) => {
      const roof = parting(aquitards, beds[at - 1], bed);
      const floor = parting(aquitards, bed, beds[at + 1]);
      return { ...bed, ...(roof ? { roof } : {}), ...(floor ? { floor } : {}) };
    }),
    goodCm: lengthsOf(ground, 'good'),
    tightCm: lengthsOf(ground, 'poor'),
  };
}
