import { figureOf, judged, notApplicable, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { doseBefore, judgeBacteria } from './bacteria.ts';
import { daysBetween, readable } from './days.ts';

/** First the chlorine is pumped off, then the well has its days, then bacteria are looked for. */
export const bacteriaSoon: Rule = {
  id: 'bacteria.soon',
  figures: ['sampleWaitDays'],
  judge(well) {
    return judgeBacteria(well, (sample) => {
      const before = doseBefore(well.record, sample);
      if (!before) return notApplicable;
      const { pumpedOffAt } = before.dose;
      if (pumpedOffAt === undefined)
        return unjudged({ what: 'disinfection', path: `${before.path}.pumpedOffAt` });
      const waitDays = figureOf(well, 'sampleWaitDays');
      if (daysBetween(pumpedOffAt, sample.takenAt) >= waitDays) return judged([]);
      const values = {
        takenOn: readable(sample.takenAt),
        pumpedOffOn: readable(pumpedOffAt),
        waitDays,
      };
      return judged([broken('bacteria.soon', 'warning', `${sample.path}.takenAt`, values)]);
    });
  },
};
