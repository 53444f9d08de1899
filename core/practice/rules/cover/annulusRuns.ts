import { tapeToleranceM } from '../../../model/bore.ts';
import type { Range } from '../../../model/range.ts';
import type { AnnulusZone, WellModel } from '../../../model/wellModel.ts';

type ZoneFill = AnnulusZone['fill'];

const packs: readonly ZoneFill[] = ['gravelPack', 'formationStabiliser'];
const seals: readonly ZoneFill[] = ['claySeal', 'bentonite', 'cementGrout', 'concrete'];

/** Gravel or coarse sand that was poured round the screen. */
export function isPack({ fill }: AnnulusZone): boolean {
  return packs.includes(fill);
}

/** What lets no water down: clay, bentonite, grout, concrete. */
export function isSeal({ fill }: AnnulusZone): boolean {
  return seals.includes(fill);
}

export function isUnrecorded({ fill }: AnnulusZone): boolean {
  return fill === 'unrecorded';
}

/** Zones that follow on each other, from the top down; at least one. */
export interface Run extends Range {
  readonly zones: readonly [AnnulusZone, ...AnnulusZone[]];
}

/** The zones round a string, from the top down. */
export function zonesRound({ annulus }: WellModel, string: number): AnnulusZone[] {
  return annulus
    .filter(({ around }) => around === string)
    .sort((one, other) => one.fromM - other.fromM);
}

/** Gathers those zones that `has` picks; what a tape does not tell apart parts no run. */
export function runsOf(zones: readonly AnnulusZone[], has: (zone: AnnulusZone) => boolean): Run[] {
  const runs: Run[] = [];
  for (const zone of zones.filter(has)) {
    const last = runs.at(-1);
    if (last && zone.fromM - last.toM <= tapeToleranceM)
      runs[runs.length - 1] = {
        fromM: last.fromM,
        toM: Math.max(last.toM, zone.toM),
        zones: [...last.zones, zone],
      };
    else runs.push({ fromM: zone.fromM, toM: zone.toM, zones: [zone] });
  }
  return runs;
}

/** The zone whose foot stands at a depth, as far as a tape tells, and that is worth a line. */
export function zoneAbove(zones: readonly AnnulusZone[], depthM: number): AnnulusZone | undefined {
  return zones.find(
    ({ fromM, toM }) => Math.abs(toM - depthM) <= tapeToleranceM && toM - fromM > tapeToleranceM,
  );
}

/** The zone whose top stands at a depth, as far as a tape tells, and that is worth a line. */
export function zoneBelow(zones: readonly AnnulusZone[], depthM: number): AnnulusZone | undefined {
  return zones.find(
    ({ fromM, toM }) => Math.abs(fromM - depthM) <= tapeToleranceM && toM - fromM > tapeToleranceM,
  );
}
