import { cylinderLitres, type Litres } from '../../base/units.ts';
import { latestRest } from '../../model/levels.ts';
import { cut } from '../../model/range.ts';
import type { WellModel } from '../../model/wellModel.ts';

/** What the litres of the hole under water lack. */
export type StandingMissing = 'boreDiameter' | 'boreDepth' | 'restLevel';

export interface StandingWater {
  /** Absent where something of it is not known. */
  readonly litres?: Litres;
  readonly missing: readonly StandingMissing[];
}

/** So little of the hole without a diameter is rounding. Metres. */
const gapM = 0.005;

/**
 * Litres of the hole, by its drilled diameter, under the latest rest level: casing, pack and water
 * together, as one volume of what is to be pumped off.
 */
export function standingWater({ bore, levels }: WellModel): StandingWater {
  const restM = latestRest(levels)?.depthM;
  const { depthM } = bore;
  const missing: StandingMissing[] = [
    ...(restM === undefined ? ['restLevel' as const] : []),
    ...(depthM === undefined ? ['boreDepth' as const] : []),
  ];
  if (restM === undefined || depthM === undefined) return { missing };
  const topM = Math.max(0, restM);
  const wet = bore.sections.flatMap((section) => {
    const range = cut(section, topM, depthM);
    return range ? [{ lengthM: range.toM - range.fromM, diameterMm: section.diameterMm }] : [];
  });
  const lengthM = wet.reduce((sum, one) => sum + one.lengthM, 0);
  if (lengthM < depthM - topM - gapM) return { missing: ['boreDiameter'] };
  return {
    litres: wet.reduce((sum, one) => sum + cylinderLitres(one.diameterMm, one.lengthM), 0),
    missing: [],
  };
}
