import { judged, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { judgeIntake } from './intake.ts';

/** The intake hangs in plain pipe, above, between or under screens. */
export const intakeInScreen: Rule = {
  id: 'intake.inScreen',
  figures: [],
  judge(well) {
    const { strings } = well.model;
    return judgeIntake(well, (intakeM) => {
      if (strings.length === 0) return unjudged({ what: 'strings', path: 'strings' });
      const screen = strings
        .flatMap(({ pieces }) => pieces)
        .find(
          ({ kind, topM, bottomM }) => kind === 'screen' && topM < intakeM && intakeM < bottomM,
        );
      if (!screen) return judged([]);
      const { topM: screenTopM, bottomM: screenBottomM } = screen;
      const values = { intakeM, screenTopM, screenBottomM };
      return judged([
        broken('intake.inScreen', 'warning', 'pump.intake', values, { fromM: intakeM }),
      ]);
    });
  },
};
