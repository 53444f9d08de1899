import { judged, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { doseBefore, judgeBacteria } from './bacteria.ts';
import { readable } from './days.ts';
import { dosesOf } from './disinfections.ts';

/** Bacteria are looked for after the well was disinfected. */
export const bacteriaUndisinfected: Rule = {
  id: 'bacteria.undisinfected',
  figures: [],
  judge(well) {
    return judgeBacteria(well, (sample) => {
      const doses = dosesOf(well.record);
      if (doses.length === 0) return unjudged({ what: 'disinfection', path: 'disinfection' });
      if (doseBefore(well.record, sample)) return judged([]);
      const undated = doses.filter(({ dose }) => (dose.at ?? dose.pumpedOffAt) === undefined);
      if (undated.length > 0)
        return unjudged(
          ...undated.map(({ path }) => ({ what: 'dates' as const, path: `${path}.at` })),
        );
      const values = { takenOn: readable(sample.takenAt) };
      return judged([
        broken('bacteria.undisinfected', 'warning', `${sample.path}.takenAt`, values),
      ]);
    });
  },
};
