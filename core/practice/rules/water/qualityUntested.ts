import { broken } from '../ruleCodes.ts';
import { judged, notApplicable, unjudged, type Rule } from '../rule.ts';
import { missingState, stageOf } from '../stage.ts';
import { judgeSampled } from './sampled.ts';

/** Water of a completed well was tested for all that is asked for before handover. */
export const qualityUntested: Rule = {
  id: 'quality.untested',
  figures: [],
  judge: (well) =>
    judgeSampled(well, ({ missingTests }) => {
      const stage = stageOf(well.record);
      if (stage === 'coming') return notApplicable;
      if (stage === 'unknown') return unjudged(missingState);
      return judged(
        missingTests.map(({ parameter, path }) =>
          broken('quality.untested', 'note', path, { parameter }),
        ),
      );
    }),
};
