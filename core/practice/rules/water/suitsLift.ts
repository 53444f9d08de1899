import { broken } from '../ruleCodes.ts';
import type { Rule } from '../rule.ts';
import { judgeSuitable } from './suitable.ts';

/** The water does not stand too deep for the kind of pump. */
export const suitsLift: Rule = {
  id: 'suits.lift',
  figures: [],
  judge: (well) =>
    judgeSuitable(
      well,
      ({ lift }) => lift,
      (against) => broken('suits.lift', 'warning', 'pump.kind', against),
    ),
};
