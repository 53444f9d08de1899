import type { DepthM } from '../../../base/units.ts';
import { nestStrings } from '../../../model/column.ts';
import { roundDepth } from '../../../model/range.ts';
import type { StringModel, WellModel } from '../../../model/wellModel.ts';
import { figureOf, judged, notApplicable, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { judgeIntake } from './intake.ts';

function isClosed({ capPath, pieces }: StringModel): boolean {
  return capPath !== undefined || pieces.at(-1)?.kind === 'sump';
}

/** Where the well ends for a pump: the closed foot of the innermost string, else the hole's. */
function bottomM({ strings, bore }: WellModel): DepthM | undefined {
  const innermost = nestStrings(strings).at(-1);
  return innermost && isClosed(innermost) ? innermost.bottomM : (bore.foundM ?? bore.depthM);
}

/** The intake stays above the bottom. One below it is a contradiction that the model says. */
export const intakeLow: Rule = {
  id: 'intake.low',
  figures: ['intakeAboveBottomM'],
  judge(well) {
    return judgeIntake(well, (intakeM) => {
      const footM = bottomM(well.model);
      if (footM === undefined) return unjudged({ what: 'boreDepth', path: 'bore.depthReached' });
      if (intakeM > footM) return notApplicable;
      const aboveM = figureOf(well, 'intakeAboveBottomM');
      if (roundDepth(footM - intakeM) >= aboveM) return judged([]);
      const values = { intakeM, footM, aboveM };
      return judged([broken('intake.low', 'warning', 'pump.intake', values, { fromM: intakeM })]);
    });
  },
};
