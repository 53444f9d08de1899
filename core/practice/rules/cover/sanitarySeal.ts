import type { DepthM } from '../../../base/units.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import { cut } from '../../../model/range.ts';
import type { AnnulusZone, WellModel } from '../../../model/wellModel.ts';
import { figureOf, type JudgedWell, type Missing } from '../rule.ts';
import { isSeal, isUnrecorded, runsOf, type Run } from './annulusRuns.ts';
import { wallZones } from './wall.ts';

/** The depths within which a practice wants the sanitary seal to begin and to end. */
export interface SealLimits {
  readonly startM: DepthM;
  readonly wantedM: DepthM;
}

export function sealLimitsOf(well: JudgedWell): SealLimits {
  return {
    startM: figureOf(well, 'sanitarySealFromM'),
    wantedM: figureOf(well, 'sanitarySealToM'),
  };
}

/**
 * The sanitary seal next to the wall of the hole: the one that the record calls so, if it begins
 * above the depth that a seal reaches, else the uppermost tight fill there, else one that is
 * called so and begins deeper. What ends above where a seal is to begin is but the pad's collar.
 */
export function sanitarySealOf(model: WellModel, limits: SealLimits): Run | undefined {
  const seals = runsOf(wallZones(model), isSeal);
  const called = seals.filter(({ zones }) => zones.some(({ sanitary }) => sanitary));
  const upper = ({ fromM }: Run) => fromM < limits.wantedM;
  return (
    called.find(upper) ?? seals.find((seal) => upper(seal) && seal.toM > limits.startM) ?? called[0]
  );
}

/** What stands next to the wall from the ground to a depth; slivers are left out. */
export function upperZones(model: WellModel, toM: number): AnnulusZone[] {
  return wallZones(model).flatMap((zone) => {
    const part = cut(zone, 0, toM);
    return part && part.toM - part.fromM > tapeToleranceM ? [{ ...zone, ...part }] : [];
  });
}

/** The stretches among them that nobody wrote of. */
export function untoldIn(zones: readonly AnnulusZone[]): Missing[] {
  return zones
    .filter(isUnrecorded)
    .map(({ fromM, toM }) => ({ what: 'fills', path: 'annulus', fromM, toM }));
}
