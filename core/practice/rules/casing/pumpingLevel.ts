import type { DepthM } from '../../../base/units.ts';
import { designRateM3h, lowestRestM, pumpingLevelM } from '../../reading/water.ts';
import { broken } from '../ruleCodes.ts';
import { figureOf, judged, unjudged, type JudgedWell, type Rule } from '../rule.ts';
import { isOver, isUnder } from './compare.ts';
import { judgeByDepth, type ScreenedString } from './screened.ts';

/** The well with no pumping level that was read at more than the rate that it is to give. */
function atDesignRate({ record, model }: JudgedWell): DepthM | undefined {
  const design = designRateM3h(record);
  const levels = model.levels.filter(
    ({ state, rateM3h }) =>
      state !== 'pumping' ||
      design === undefined ||
      rateM3h === undefined ||
      !isOver(rateM3h, design),
  );
  return pumpingLevelM(record, { ...model, levels });
}

function judgeScreens(well: JudgedWell, { label, runs }: ScreenedString) {
  const { record, model } = well;
  const deepestM = pumpingLevelM(record, model);
  const missing = { what: 'pumpingLevel', path: 'layingOut.drawdown' } as const;
  if (deepestM === undefined) return unjudged(missing);
  const underM = figureOf(well, 'screenUnderPumpingLevelM');
  const dryM = lowestRestM(record, model);
  const dryLimitM = dryM === undefined ? -Infinity : dryM + figureOf(well, 'screenUnderDryLevelM');
  const wet = runs.filter(({ fromM }) => !isUnder(fromM, dryLimitM));
  const reached = (levelM: DepthM) => wet.filter(({ fromM }) => isUnder(fromM, levelM + underM));
  if (reached(deepestM).length === 0) return judged([]);
  const levelM = atDesignRate(well);
  if (levelM === undefined) return unjudged(missing);
  return judged(
    reached(levelM).map((run) => {
      const values = { string: label, levelM, limitM: levelM + underM };
      return broken('screened.pumping', 'warning', run.path, values, run);
    }),
  );
}

/**
 * The water stands above the screens also while the well gives its rate. A level that was read at
 * a higher rate can only clear; screens that the rest level already leaves dry are said of there.
 */
export const pumpingLevel: Rule = {
  id: 'screened.pumping',
  figures: ['screenUnderPumpingLevelM'],
  judge: (well) => judgeByDepth(well, (screened) => judgeScreens(well, screened)),
};
