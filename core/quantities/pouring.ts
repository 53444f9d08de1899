import { known } from '../base/known.ts';
import type { RecordPath } from '../base/recordPath.ts';
import { ringLitres, type DepthM, type Litres, type Metres } from '../base/units.ts';
import { slurryLitres } from '../model/volumes.ts';
import type { AnnulusZone, Ring, WellModel } from '../model/wellModel.ts';
import type { Practice } from '../practice/practice.ts';
import type { AnnulusFill, Pour } from '../record/annulus.ts';
import type { WellRecord } from '../record/schema.ts';

/**
 * What a sounding says: `high` where the fill stands higher than what was poured can reach (a
 * bridge, or ground that fell in), `low` where it stands lower (a washout, loss into the ground,
 * or a fill that has not settled).
 */
export type SoundingSays = 'asExpected' | 'high' | 'low';

/** One step of pouring, with where the fill should stand by now. Depths in metres below ground. */
export interface PourStep {
  readonly path: RecordPath;
  /** Poured since the fill was begun; absent where an amount before is not known. */
  readonly totalLitres?: Litres;
  readonly expectedM?: DepthM;
  /** Between these the sounding is as expected. */
  readonly highestM?: DepthM;
  readonly lowestM?: DepthM;
  readonly soundedM?: DepthM;
  /** Sounded less expected: positive where the fill stands lower than expected. */
  readonly differenceM?: Metres;
  readonly says?: SoundingSays;
}

/** Litres of one sack of a fill, loose or as slurry; absent where the kind tells none. */
function litresOfSack(fill: AnnulusFill, { figures }: Practice): Litres | undefined {
  const { value: gravelSackKg } = figures.gravelSackKg;
  switch (fill.fill) {
    case 'gravelPack':
    case 'formationStabiliser':
      return (fill.sackMass ?? gravelSackKg) / figures.gravelKgL.value;
    case 'claySeal':
    case 'bentonite':
      return (fill.sackMass ?? figures.claySackKg.value) / figures.clayKgL.value;
    case 'cementGrout':
      return slurryLitres(
        fill.sackMass ?? figures.cementSackKg.value,
        fill.waterCement ?? figures.groutWaterCement.value,
      );
    default:
      return undefined;
  }
}

function litresOf(pour: Pour, perSack: Litres | undefined): Litres | undefined {
  if (pour.litres !== undefined) return pour.litres;
  if (pour.sacks === undefined || perSack === undefined) return undefined;
  return pour.sacks * perSack;
}

/** The rings of the space that a zone stands in, from a foot up to the ground. */
function ringsAbove(zone: AnnulusZone, footM: DepthM, { annulus }: WellModel): Ring[] {
  return annulus
    .filter(({ around, inside }) => around === zone.around && inside === zone.inside)
    .flatMap(({ rings }) => rings)
    .filter(({ fromM }) => fromM < footM)
    .map((ring) => ({ ...ring, toM: Math.min(ring.toM, footM) }))
    .toSorted((a, b) => b.toM - a.toM);
}

/** Depth up to which litres fill the rings from a foot; absent where a gap in them is reached. */
function topAfter(litres: Litres, footM: DepthM, rings: readonly Ring[]): DepthM | undefined {
  let [top, left] = [footM, litres];
  for (const { fromM, toM, outerMm, innerMm } of rings) {
    if (Math.abs(toM - top) > 1e-6) return undefined;
    const perM = ringLitres(outerMm, innerMm, 1);
    if (left <= perM * (toM - fromM)) return toM - left / perM;
    left -= perM * (toM - fromM);
    top = fromM;
  }
  return rings.length === 0 ? undefined : top;
}

/** Where a fill begins: on what was sounded last of the fill below it, else its own foot. */
function footOf(at: number, annulus: readonly AnnulusFill[]): DepthM {
  const fill = annulus[at]!;
  const below = annulus.find(
    (one) => one !== fill && (one.around ?? 0) === (fill.around ?? 0) && one.from === fill.to,
  );
  return below?.pours?.findLast(({ sounded }) => sounded !== undefined)?.sounded ?? fill.to;
}

function saysOf(soundedM: DepthM, highestM: DepthM, lowestM: DepthM): SoundingSays {
  if (soundedM < highestM) return 'high';
  return soundedM > lowestM ? 'low' : 'asExpected';
}

function step(
  pour: Pour,
  path: RecordPath,
  totalLitres: Litres | undefined,
  topOf: (litres: Litres) => DepthM | undefined,
  { figures }: Practice,
): PourStep {
  const { sounded: soundedM } = pour;
  const reach = (ratio: number) =>
    totalLitres === undefined ? undefined : topOf(totalLitres / ratio);
  const [expectedM, high, low] = [
    reach(1),
    reach(figures.pouredLeastRatio.value),
    reach(figures.pouredMostRatio.value),
  ];
  const { value: tapeM } = figures.tallyToleranceM;
  const highestM = high === undefined ? undefined : high - tapeM;
  const lowestM = low === undefined ? undefined : low + tapeM;
  const both = soundedM !== undefined && expectedM !== undefined;
  const banded = soundedM !== undefined && highestM !== undefined && lowestM !== undefined;
  return {
    path,
    ...known({
      totalLitres,
      expectedM,
      highestM,
      lowestM,
      soundedM,
      differenceM: both ? soundedM - expectedM : undefined,
      says: banded ? saysOf(soundedM, highestM, lowestM) : undefined,
    }),
  };
}

/**
 * The pouring of one fill, step by step. A sounding is as expected between where the fill would
 * stand if the hole took the practice's most and its least ratio of poured to computed volume,
 * and the tolerance of the tape on either side. The list is empty for a fill that is not there.
 */
export function pourSteps(
  at: number,
  record: WellRecord,
  model: WellModel,
  practice: Practice,
): readonly PourStep[] {
  const annulus = record.annulus ?? [];
  const fill = annulus[at];
  if (!fill) return [];
  const path = `annulus[${at}]`;
  const zone = model.annulus.find((one) => one.path === path);
  const footM = footOf(at, annulus);
  const rings = zone ? ringsAbove(zone, footM, model) : [];
  const perSack = litresOfSack(fill, practice);
  let total: Litres | undefined = 0;
  return (fill.pours ?? []).map((pour, index) => {
    const litres = litresOf(pour, perSack);
    total = total === undefined || litres === undefined ? undefined : total + litres;
    const topOf = (reached: Litres) => topAfter(reached, footM, rings);
    return step(pour, `${path}.pours[${index}]`, total, topOf, practice);
  });
}
