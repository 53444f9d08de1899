import type { DepthM, Millimetres, PaperMm } from '../../../base/units.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import { widthScaleFor } from '../../scale.ts';
import { shownLevels } from '../../parts/section/waterLevels.ts';

/** No hole is deeper than some 12 km; what is typed beyond this is not followed on paper. */
const beyondAnyHoleM = 20_000;

/** The depths that a sheet must show: from what stands highest to what reaches deepest. */
export function extentOf(model: WellModel): { fromM: DepthM; toM: DepthM } {
  const { bore, strata, samples, strings, annulus, levels, strikes } = model;
  const highest = [
    ...strings.map(({ topM }) => topM),
    ...annulus.map(({ fromM }) => fromM),
    ...shownLevels(levels).map(({ depthM }) => depthM),
    ...strikes.map(({ riseM }) => riseM ?? 0),
  ];
  const deepest = [
    bore.depthM ?? 0,
    bore.sections.at(-1)?.toM ?? 0,
    ...strata.map(({ toM }) => toM),
    ...samples.map(({ toM }) => toM),
    ...strings.map(({ bottomM }) => bottomM),
    ...annulus.map(({ toM }) => toM),
    ...shownLevels(levels).map(({ depthM }) => depthM),
    ...strikes.map(({ depthM }) => depthM),
  ];
  const toM = Math.min(Math.max(...deepest), beyondAnyHoleM);
  const fromM = Math.max(Math.min(0, ...highest), -beyondAnyHoleM);
  return { fromM, toM: toM > 0 ? toM : 1 };
}

function diametersOf({ bore, strings }: WellModel): Millimetres[] {
  const all = [
    ...bore.sections.map(({ diameterMm }) => diameterMm),
    ...strings.flatMap(({ pieces }) =>
      pieces.flatMap(({ outsideMm, upperOutsideMm, insideMm }) => [
        outsideMm ?? insideMm,
        upperOutsideMm,
      ]),
    ),
  ];
  return all.filter((one) => one !== undefined && one > 0) as Millimetres[];
}

/** At a smaller scale than this the pipes of a small well can hardly be told apart. */
const smallestWanted = 20;
/** How much wider a dug part must be than the rest before it is cut rather than shown whole. */
const muchWider = 2.5;

/**
 * The scale of diameters: the largest that shows the widest part whole. Where one part (a dug
 * shaft) is so wide that the rest would shrink to a line, it is cut, and the rest decides.
 * Undefined where no diameter is known.
 */
export function widthScaleOf(model: WellModel, room: PaperMm): number | undefined {
  const diameters = diametersOf(model);
  if (diameters.length === 0) return undefined;
  const widest = Math.max(...diameters);
  const whole = widthScaleFor(widest, room);
  const rest = diameters.filter((one) => one * muchWider <= widest);
  if (whole <= smallestWanted || rest.length === 0) return whole;
  return widthScaleFor(Math.max(...rest), room);
}
