import { broken } from '../ruleCodes.ts';
import type { Rule } from '../rule.ts';
import { judgeSuitable } from './suitable.ts';

/** The kind of pump goes down the casing. */
export const suitsCasing: Rule = {
  id: 'suits.casing',
  figures: [],
  judge: (well) =>
    judgeSuitable(
      well,
      ({ casing }) => casing,
      (against) => broken('suits.casing', 'warning', 'pump.kind', against),
    ),
};
