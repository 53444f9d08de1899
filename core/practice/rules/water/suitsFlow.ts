import { broken } from '../ruleCodes.ts';
import type { Rule } from '../rule.ts';
import { judgeSuitable } from './suitable.ts';

/** The kind of pump gives what the users need within a day. */
export const suitsFlow: Rule = {
  id: 'suits.flow',
  figures: [],
  judge: (well) =>
    judgeSuitable(
      well,
      ({ flow }) => flow,
      (against) => broken('suits.flow', 'warning', 'pump.kind', against),
    ),
};
