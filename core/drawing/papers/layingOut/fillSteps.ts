import { known } from '../../../base/known.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import type { DepthM, Litres, Metres } from '../../../base/units.ts';
import { roundDepth } from '../../../model/range.ts';
import type { AnnulusZone, StringModel, WellModel } from '../../../model/wellModel.ts';
import type { FigureId } from '../../../practice/figures.ts';
import type { Practice } from '../../../practice/practice.ts';
import type { Quantities, QuantityId } from '../../../quantities/quantity.ts';
import type { WellRecord } from '../../../record/schema.ts';

/** One fill as it is poured. */
export interface FillStep {
  /** A is poured first. */
  readonly letter: string;
  readonly zone: AnnulusZone;
  /** Where its top must be found, from the ground and from the top of the casing around it. */
  readonly topM: DepthM;
  readonly fromCasingTopM?: Metres;
  /** Litres that its room holds. */
  readonly litres?: Litres;
  /** Sacks to have at hand, with what the practice adds for losses, and what one weighs. */
  readonly sacks?: number;
  readonly sackKg?: number;
  readonly path?: RecordPath;
}

const sackKinds: Partial<Record<AnnulusZone['fill'], readonly [QuantityId, FigureId]>> = {
  gravelPack: ['gravelZoneSacks', 'gravelSackKg'],
  formationStabiliser: ['gravelZoneSacks', 'gravelSackKg'],
  claySeal: ['clayZoneSacks', 'claySackKg'],
  bentonite: ['clayZoneSacks', 'claySackKg'],
  cementGrout: ['groutZoneCementSacks', 'cementSackKg'],
};

/** A, B, … Z, AA, AB and so on. */
export function letterOf(at: number): string {
  const last = String.fromCharCode(65 + (at % 26));
  return at < 26 ? last : letterOf(Math.floor(at / 26) - 1) + last;
}

/**
 * When a fill is poured among those of other strings: what lies under the casing first, then
 * round each string in the order in which they are set, then what stands above them all.
 */
function turnOf(zone: AnnulusZone, strings: readonly StringModel[]): number {
  if (zone.inside !== undefined) return strings.length + zone.inside;
  if (zone.around !== undefined) return zone.around;
  const above = strings.length > 0 && strings.every(({ topM }) => zone.toM <= topM + 1e-6);
  return above ? Infinity : -1;
}

function sacksOf(
  { fill, path, fromM, toM }: AnnulusZone,
  record: WellRecord,
  { figures }: Practice,
  { groups }: Quantities,
) {
  const [id, weight] = sackKinds[fill] ?? [];
  if (id === undefined || weight === undefined) return {};
  const sacks = groups
    .flatMap(({ quantities }) => quantities)
    .find(
      (one) =>
        one.id === id &&
        one.zone?.path === path &&
        one.zone?.fromM === fromM &&
        one.zone.toM === toM,
    )?.value;
  const written = record.annulus?.find((_, at) => `annulus[${at}]` === path)?.sackMass;
  return { sacks, sackKg: written ?? figures[weight].value };
}

/** The fills from the first to be poured to the last, with the depths to find their tops at. */
export function fillSteps(
  record: WellRecord,
  { annulus, strings }: WellModel,
  practice: Practice,
  quantities: Quantities,
): FillStep[] {
  const turns = (one: AnnulusZone, other: AnnulusZone) => {
    const [a, b] = [turnOf(one, strings), turnOf(other, strings)];
    return a === b ? other.toM - one.toM || other.fromM - one.fromM : a < b ? -1 : 1;
  };
  return annulus.toSorted(turns).map((zone, at) => {
    const index = zone.around ?? zone.inside;
    const casing = strings.find((one) => one.index === index);
    return {
      letter: letterOf(at),
      zone,
      topM: zone.fromM,
      ...known({
        fromCasingTopM: casing && roundDepth(zone.fromM - casing.topM),
        litres: zone.litres,
        path: zone.path,
        ...sacksOf(zone, record, practice, quantities),
      }),
    };
  });
}
