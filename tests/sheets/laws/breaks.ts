import { shownLevels } from '../../../core/drawing/parts/section/waterLevels.ts';
import type { WellModel } from '../../../core/model/wellModel.ts';
import { extentOf } from '../extent.ts';
import { groupsNamed, placedOn } from '../placed.ts';
import { rulerOf } from '../ruler.ts';
import { mm, type Law } from './law.ts';

/** A break stands from the depth to the depth that its words name, and within no other height. */
export const breaksAtDepth: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) => {
    const ruler = rulerOf(page);
    const bands = groupsNamed(page.items, 'depthBreak');
    if (!ruler || bands.length !== ruler.leftOut.length)
      return bands.length === 0 ? [] : [`page ${at + 1}: ${bands.length} breaks without words`];
    return bands.flatMap(({ items }, n) => {
      const extents = placedOn({ ...page, items }).map(({ item }) => extentOf(item));
      const top = Math.min(...extents.map((one) => one[1]));
      const foot = Math.max(...extents.map((one) => one[3]));
      const { fromM, toM } = ruler.leftOut[n]!;
      const meant = [ruler.yAt(fromM), ruler.yAt(toM)] as const;
      const right = Math.abs(top - meant[0]) < 1e-4 && Math.abs(foot - meant[1]) < 1e-4;
      const where = `${mm(top)} to ${mm(foot)}`;
      return right ? [] : [`page ${at + 1}: the break of ${fromM} to ${toM} m stands at ${where}`];
    });
  });

/** All depths at which something of a well is to be seen; joints of like pipes are not. */
function depthsOf(model: WellModel): number[] {
  const { bore, strata, samples, strings, annulus, levels, strikes, pump } = model;
  const pieces = strings.flatMap((one) => one.pieces);
  return [
    ...[bore.depthM, bore.foundM, pump?.intakeM].filter((one) => one !== undefined),
    ...[...strata, ...bore.sections, ...annulus].flatMap(({ fromM, toM }) => [fromM, toM]),
    ...samples.map(({ fromM, toM }) => (fromM + toM) / 2),
    ...shownLevels(levels).map(({ depthM }) => depthM),
    ...strikes.flatMap(({ depthM, riseM }) => [depthM, riseM ?? depthM]),
    ...strings.flatMap(({ topM, bottomM }) => [topM, bottomM]),
    ...pieces.flatMap(({ centralisersM }) => centralisersM),
    ...pieces.filter(({ kind }) => kind !== 'plain').flatMap((one) => [one.topM, one.bottomM]),
  ];
}

/** Nothing of the well lies in what a page leaves out. */
export const nothingLeftOut: Law = ({ drawing, model }) =>
  drawing.pages.flatMap((page, at) =>
    (rulerOf(page)?.leftOut ?? []).flatMap(({ fromM, toM }) =>
      depthsOf(model)
        .filter((depthM) => depthM > fromM && depthM < toM)
        .map((depthM) => `page ${at + 1}: ${depthM} m lies in a break`),
    ),
  );
