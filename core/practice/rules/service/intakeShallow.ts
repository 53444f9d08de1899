import { roundDepth } from '../../../model/range.ts';
import { lowestRestM, pumpingLevelM } from '../../reading/water.ts';
import { figureOf, judged, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { judgeIntake } from './intake.ts';

/**
 * The intake hangs under the pumping water level. A pump above even the rest level is grave: it
 * draws nothing. Where no pumping level is known, the rest level tells at least of that.
 */
export const intakeShallow: Rule = {
  id: 'intake.shallow',
  figures: ['intakeUnderPumpingLevelM'],
  judge(well) {
    const { record, model } = well;
    return judgeIntake(well, (intakeM) => {
      const restM = lowestRestM(record, model);
      const pumpingM = pumpingLevelM(record, model);
      const levelM = pumpingM ?? restM;
      const underM = figureOf(well, 'intakeUnderPumpingLevelM');
      if (levelM !== undefined && roundDepth(intakeM - levelM) < underM) {
        const isDry = restM !== undefined && intakeM <= restM;
        const values = { intakeM, levelM, underM };
        const at = { fromM: intakeM };
        return judged([
          broken('intake.shallow', isDry ? 'error' : 'warning', 'pump.intake', values, at),
        ]);
      }
      if (pumpingM === undefined) return unjudged({ what: 'pumpingLevel', path: 'levels' });
      return judged([]);
    });
  },
};
