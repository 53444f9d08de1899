import { dryLevelM, lowestRestM } from '../../reading/water.ts';
import { broken } from '../ruleCodes.ts';
import { figureOf, judged, unjudged, type JudgedWell, type Rule } from '../rule.ts';
import { isUnder } from './compare.ts';
import { judgeByDepth, type ScreenedString } from './screened.ts';

function judgeScreens(well: JudgedWell, { label, runs }: ScreenedString) {
  const { record, model } = well;
  const levelM = lowestRestM(record, model);
  const missing = { what: 'dryLevel', path: 'layingOut.drySeasonLevel' } as const;
  if (levelM === undefined) return unjudged(missing);
  const limitM = levelM + figureOf(well, 'screenUnderDryLevelM');
  const findings = runs
    .filter(({ fromM }) => isUnder(fromM, limitM))
    .map((run) => {
      const severity = run.toM <= levelM ? 'error' : 'warning';
      return broken('screened.dry', severity, run.path, { string: label, levelM, limitM }, run);
    });
  const certain = findings.length > 0 || dryLevelM(record, model) !== undefined;
  return certain ? judged(findings) : unjudged(missing);
}

/**
 * Screens stand under the water also at the end of the dry season. Where that level is not known,
 * a rest level that was read can only condemn: the dry season's lies no higher.
 */
export const dryLevel: Rule = {
  id: 'screened.dry',
  figures: ['screenUnderDryLevelM'],
  judge: (well) => judgeByDepth(well, (screened) => judgeScreens(well, screened)),
};
