import { known } from '../base/known.ts';
import { valueAt } from '../base/recordPath.ts';
import type { AnnulusZone, WellModel } from '../model/wellModel.ts';
import type { AnnulusFill, FillKind } from '../record/annulus.ts';
import type { WellRecord } from '../record/schema.ts';
import type { Missing, Quantity, QuantityZone } from './quantity.ts';
import { reckon } from './reckon.ts';
import type { ReckonedWell } from './reckonedWell.ts';
import { ringVolume } from './ringVolume.ts';

export function zoneOf({ fromM, toM, path, fill }: AnnulusZone): QuantityZone {
  return { fromM, toM, fill, ...known({ path }) };
}

/** Litres of a zone; none where a diameter of it is not known. */
export function zoneVolume(zone: AnnulusZone): Quantity | undefined {
  const id = zone.inside === undefined ? 'annulusZoneLitres' : 'insideZoneLitres';
  return reckon(id, zone.litres, ringVolume(zone.rings), { zone: zoneOf(zone) });
}

/** What a zone without litres lacks: the hole's diameter where it has a gap there, else a pipe's. */
export function missingOfZone(
  { fromM, toM, around, inside }: AnnulusZone,
  { bore }: WellModel,
): Missing {
  const string = inside ?? around;
  const bored = bore.sections
    .map((section) => Math.min(section.toM, toM) - Math.max(section.fromM, fromM))
    .reduce((sum, lengthM) => sum + Math.max(0, lengthM), 0);
  const covered = bored >= toM - fromM - 1e-6;
  return (inside !== undefined || covered) && string !== undefined
    ? { what: 'pipeDiameter', path: `strings[${string}]`, fromM, toM }
    : { what: 'boreDiameter', path: 'bore.sections', fromM, toM };
}

/** The fill that a zone is of, as the record tells it. */
export function fillOf({ path }: AnnulusZone, record: WellRecord): AnnulusFill | undefined {
  return path === undefined ? undefined : (valueAt(record, path) as AnnulusFill | undefined);
}

/** A zone of which the litres are known. */
export interface FilledZone {
  readonly zone: AnnulusZone;
  readonly volume: Quantity;
}

/** The zones of some kinds of fill, and what is missing of those without litres. */
export function zonesFilled(
  { record, model }: ReckonedWell,
  kinds: readonly FillKind[],
): { readonly zones: readonly FilledZone[]; readonly missing: readonly Missing[] } {
  const those = model.annulus.filter(({ fill }) => kinds.some((kind) => kind === fill));
  const zones = those.flatMap((zone) => {
    const volume = zoneVolume(zone);
    return volume ? [{ zone, volume }] : [];
  });
  const lacking = those.filter((zone) => zones.every((one) => one.zone !== zone));
  const uncased = record.identity?.state === 'dry' && (record.strings ?? []).length === 0;
  const unfilled = (record.annulus ?? []).length === 0 && !uncased;
  return {
    zones,
    missing: [
      ...(unfilled ? [{ what: 'fills', path: 'annulus' } as const] : []),
      ...lacking.map((zone) => missingOfZone(zone, model)),
    ],
  };
}
