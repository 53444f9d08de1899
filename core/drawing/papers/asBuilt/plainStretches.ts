import type { DepthM, PaperMm } from '../../../base/units.ts';
import type { PieceModel, WellModel } from '../../../model/wellModel.ts';
import { stretchesOf } from '../../parts/section/casingCallouts.ts';
import { shownLevels } from '../../parts/section/waterLevels.ts';
import { sampledAsWhole } from '../../parts/log/samples.ts';
import { breakHeight, paperLength, type DepthRange } from '../../scale.ts';

const middleOf = ({ fromM, toM }: DepthRange): DepthM => (fromM + toM) / 2;

const endsOf = (ranges: readonly DepthRange[]): DepthM[] =>
  ranges.flatMap(({ fromM, toM }) => [fromM, toM]);

const rangeOf = ({ topM, bottomM }: Pick<PieceModel, 'topM' | 'bottomM'>): DepthRange => ({
  fromM: topM,
  toM: bottomM,
});

/** Every depth at which something of the well begins, ends, stands or was found. */
function marked(model: WellModel): DepthM[] {
  const { bore, strata, samples, strings, annulus, levels, strikes, pump } = model;
  const single = [0, bore.depthM, bore.foundM, pump?.intakeM, pump?.cylinderTopM];
  return [
    ...single.filter((one) => one !== undefined),
    ...endsOf([...strata, ...bore.sections, ...annulus]),
    ...strata.filter((one) => sampledAsWhole(one, samples)).map(middleOf),
    ...samples.map(middleOf),
    ...shownLevels(levels).map(({ depthM }) => depthM),
    ...strikes.flatMap(({ depthM, riseM }) => [depthM, riseM ?? depthM]),
    ...strings.flatMap((one) => endsOf(stretchesOf(one).map(rangeOf))),
    ...strings.flatMap(({ pieces }) => pieces.flatMap((one) => one.centralisersM)),
  ];
}

/**
 * Stretches of a well in which nothing changes and nothing stands: one layer, one fill, one size
 * of hole, pipes that are alike and have no slots. Joints of such pipes do not count: the tally
 * tells them.
 */
export function plainStretches(model: WellModel, { fromM, toM }: DepthRange): DepthRange[] {
  const screens = model.strings
    .flatMap(({ pieces }) => pieces.filter(({ kind }) => kind === 'screen'))
    .map(rangeOf);
  const inside = marked(model).filter((one) => one > fromM && one < toM);
  const depths = [...new Set([fromM, ...inside, toM])].sort((a, b) => a - b);
  return depths
    .slice(1)
    .map((depthM, at) => ({ fromM: depths[at]!, toM: depthM }))
    .filter((one) => one.fromM >= 0)
    .filter((one) => !screens.some((s) => s.fromM < one.toM && s.toM > one.fromM));
}

/** What is kept of a plain stretch at each end, and the least that a break must save. */
const kept: PaperMm = 9;
const leastSaving: PaperMm = 25;

/** Paper that a break saves. */
export function saving({ fromM, toM }: DepthRange, scale: number): PaperMm {
  return paperLength(toM - fromM, scale) - breakHeight;
}

/** The depths that plain stretches can spare at a scale, in whole metres; what saves most first. */
export function spareDepths(plain: readonly DepthRange[], scale: number): DepthRange[] {
  const keptM = (kept * scale) / 1000;
  return plain
    .map(({ fromM, toM }) => ({ fromM: Math.ceil(fromM + keptM), toM: Math.floor(toM - keptM) }))
    .filter((one) => saving(one, scale) >= leastSaving)
    .sort((a, b) => saving(b, scale) - saving(a, scale));
}
