import type { DepthM, Millimetres } from '../../../base/units.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import { shownLevels } from '../../parts/section/waterLevels.ts';

/** The depths that a sheet must show: from what stands highest to what reaches deepest. */
export function extentOf(model: WellModel): { fromM: DepthM; toM: DepthM } {
  const { bore, strata, strings, annulus, levels, strikes } = model;
  const highest = [
    ...strings.map(({ topM }) => topM),
    ...annulus.map(({ fromM }) => fromM),
    ...shownLevels(levels).map(({ depthM }) => depthM),
  ];
  const deepest = [
    bore.depthM ?? 0,
    bore.sections.at(-1)?.toM ?? 0,
    ...strata.map(({ toM }) => toM),
    ...strings.map(({ bottomM }) => bottomM),
    ...annulus.map(({ toM }) => toM),
    ...shownLevels(levels).map(({ depthM }) => depthM),
    ...strikes.map(({ depthM }) => depthM),
  ];
  const toM = Math.max(...deepest);
  return { fromM: Math.min(0, ...highest), toM: toM > 0 ? toM : 1 };
}

/** The widest thing in the section, or undefined where no diameter is known. */
export function widestOf({ bore, strings }: WellModel): Millimetres | undefined {
  const diameters = [
    ...bore.sections.map(({ diameterMm }) => diameterMm),
    ...strings.flatMap(({ pieces }) =>
      pieces.flatMap(({ outsideMm, upperOutsideMm }) => [outsideMm, upperOutsideMm]),
    ),
  ].filter((one) => one !== undefined && one > 0);
  return diameters.length > 0 ? Math.max(...(diameters as number[])) : undefined;
}
