import { tapeToleranceM } from '../../../model/bore.ts';
import { cut, joinLaid, roundDepth, type Range } from '../../../model/range.ts';
import type { Stratum, WellModel } from '../../../model/wellModel.ts';
import { conductanceOf, holdsBack } from '../../reading/ground.ts';
import { restLevelM } from '../../reading/water.ts';

/** Conducting ground without other ground in it. */
export interface Aquifer extends Range {
  readonly strata: readonly Stratum[];
}

/** Conducting ground from the top down. */
export function aquifersOf(strata: readonly Stratum[]): Aquifer[] {
  const aquifers: Aquifer[] = [];
  for (const stratum of strata) {
    if (conductanceOf(stratum.interval) !== 'good') continue;
    const last = aquifers.at(-1);
    const { fromM, toM } = stratum;
    if (last?.toM === fromM)
      aquifers[aquifers.length - 1] = { ...last, toM, strata: [...last.strata, stratum] };
    else aquifers.push({ fromM, toM, strata: [stratum] });
  }
  return aquifers;
}

/** The thickest ground between two aquifers that holds water back, if it is thick enough. */
export function aquitardBetween(
  strata: readonly Stratum[],
  upper: Range,
  lower: Range,
  leastM: number,
): Range | undefined {
  const between = strata
    .filter(({ fromM, toM }) => fromM >= upper.toM && toM <= lower.fromM)
    .filter(({ interval }) => holdsBack(interval));
  const laid = between.map(({ fromM, toM }) => ({ fromM, toM, item: undefined }));
  return joinLaid(laid, () => true)
    .map(({ fromM, toM }) => ({ fromM, toM }))
    .filter(({ fromM, toM }) => roundDepth(toM - fromM) >= leastM)
    .sort((one, other) => other.toM - other.fromM - (one.toM - one.fromM))[0];
}

/** Whether a stretch reaches saturated ground of an aquifer. */
export type Reach = 'yes' | 'no' | 'restUnknown';

function wetPart(
  { interval, fromM, toM }: Stratum,
  restM: number | undefined,
): Range | 'restUnknown' | undefined {
  if (interval.moisture === 'waterBearing') return { fromM, toM };
  if (interval.moisture === 'dry' || interval.moisture === 'moist') return undefined;
  return restM === undefined ? 'restUnknown' : cut({ fromM, toM }, restM, Infinity);
}

function overlaps(one: Range, other: Range): boolean {
  const part = cut(one, other.fromM, other.toM);
  return part !== undefined && part.toM - part.fromM > tapeToleranceM;
}

/**
 * Ground is saturated that the log calls water-bearing, and what lies below the rest level
 * unless the log calls it dry or moist.
 */
export function reachOf(model: WellModel, stretch: Range, aquifer: Aquifer): Reach {
  const restM = restLevelM(model);
  const reached = aquifer.strata
    .filter((stratum) => overlaps(stretch, stratum))
    .map((stratum) => wetPart(stratum, restM));
  if (reached.some((part) => typeof part === 'object' && overlaps(stretch, part))) return 'yes';
  return reached.includes('restUnknown') ? 'restUnknown' : 'no';
}
