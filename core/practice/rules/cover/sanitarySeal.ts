import { tapeToleranceM } from '../../../model/bore.ts';
import type { AnnulusZone, WellModel } from '../../../model/wellModel.ts';
import { cut } from '../../../model/range.ts';
import type { Missing } from '../rule.ts';
import { isSeal, isUnrecorded, runsOf, type Run } from './annulusRuns.ts';
import { wallZones } from './wall.ts';

/**
 * The sanitary seal next to the wall of the hole: the uppermost tight fill that begins above the
 * depth that a seal reaches, else the one that the record calls so.
 */
export function sanitarySealOf(model: WellModel, toM: number): Run | undefined {
  const seals = runsOf(wallZones(model), isSeal);
  return (
    seals.find(({ fromM }) => fromM < toM) ??
    seals.find(({ zones }) => zones.some(({ sanitary }) => sanitary))
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
