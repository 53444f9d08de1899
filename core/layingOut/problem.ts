import type { Centimetres } from './centimetres.ts';
import type { Aquifer, Bed, Ground } from './ground.ts';
import { screenedShare, type Limits } from './limits.ts';
import type { Family } from './stock.ts';

/** What a completion is searched for, on a grid of centimetres. */
export interface Problem {
  readonly ground: Ground;
  readonly families: readonly Family[];
  readonly limits: Limits;
  /** Depth of the open hole. */
  readonly holeCm: Centimetres;
  /** Lowest rest level. */
  readonly dryCm: Centimetres;
  /** Water level while the design rate is pumped; the rest level where nothing tells. */
  readonly pumpingCm: Centimetres;
}

/** How deep the seals reach at least: clay under the sanitary seal's grout, which seals with it. */
export function sealedToCm({ sanitaryCm, clayUnderGroutCm, clayCm }: Limits): Centimetres {
  return Math.max(sanitaryCm + clayUnderGroutCm, clayCm);
}

/**
 * The shallowest top of the slots in an aquifer: under the water
 * at rest and while pumping, low enough for pack and seals
 * under the sanitary seal, and for a seal in what parts it from the aquifer above.
 */
export function highestSlotCm(
  { roof, topCm }: Aquifer,
  { limits, dryCm, pumpingCm }: Problem,
): Centimetres {
  const { packCm, partingClayCm } = limits;
  const forSeals = sealedToCm(limits) + packCm;
  const forParting = roof ? roof.topCm + partingClayCm + packCm : 0;
  const forWater = Math.max(dryCm + limits.underDryCm, pumpingCm + limits.underPumpingCm);
  return Math.max(topCm, forWater, forSeals, forParting);
}

/** The part of each aquifer that may be screened; nothing of one that has none. */
export function screenable(problem: Problem, depthCm: Centimetres): Bed[] {
  return problem.ground.aquifers.flatMap((of) => {
    const topCm = highestSlotCm(of, problem);
    const footCm = Math.min(of.footCm, depthCm);
    return topCm < footCm && problem.ground.goodCm(topCm, footCm) > 0
      ? [{ topCm, footCm, of }]
      : [];
  });
}

/**
 * Screen that the safest completion asks for in good ground: the lower third of the aquifer that
 * has the most good ground under the dry level, or all of it where that is thin.
 */
export function neededCm({ ground, limits, dryCm, holeCm }: Problem): Centimetres {
  const wet = ground.aquifers.map(({ topCm, footCm }) =>
    ground.goodCm(Math.max(topCm, dryCm + limits.underDryCm), Math.min(footCm, holeCm)),
  );
  const most = Math.max(0, ...wet);
  return Math.min(most, Math.max(Math.ceil(most * screenedShare), limits.screenLeastCm));
}

/** Whether slots between two depths meet good ground, and not too much that is tight. */
export function isOpenTo(
  { ground, limits }: Problem,
  topCm: Centimetres,
  footCm: Centimetres,
): boolean {
  const tightCm = ground.tightCm(topCm, footCm);
  return tightCm <= limits.tightShare * (footCm - topCm) && ground.goodCm(topCm, footCm) > 0;
}
