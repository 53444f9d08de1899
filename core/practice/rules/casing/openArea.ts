import { openAreaPercentOf } from '../../reading/openArea.ts';
import { broken } from '../ruleCodes.ts';
import { figureOf, judged, unjudged, type JudgedWell, type Rule, type Verdict } from '../rule.ts';
import { isUnder } from './compare.ts';
import { screenRows } from './pack.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';
import { judgeScreened, type ScreenedString } from './screened.ts';
import { together } from './together.ts';

function judgeRun(well: JudgedWell, { label }: ScreenedString, run: ScreenRun): Verdict {
  const least = figureOf(well, 'openAreaLeastPercent');
  return together(
    screenRows(well, run).map(({ path, component }) => {
      const percent = openAreaPercentOf(component);
      if (percent === undefined) return unjudged({ what: 'openArea', path: `${path}.openArea` });
      if (!isUnder(percent, least)) return judged([]);
      const values = { string: label, percent, least };
      return judged([broken('screened.openArea', 'warning', path, values, run)]);
    }),
  );
}

/** A screen is open enough to be developed through. */
export const openArea: Rule = {
  id: 'screened.openArea',
  figures: ['openAreaLeastPercent'],
  judge: (well) =>
    judgeScreened(well, (screened) =>
      together(screened.runs.map((run) => judgeRun(well, screened, run))),
    ),
};
