import { broken } from '../ruleCodes.ts';
import { judged, unjudged, type Rule } from '../rule.ts';
import { judgeScreened } from './screened.ts';

/**
 * A string with screens is closed at its foot. A tally without a cap says that there is none where
 * somebody follows the well from its laying out on; of a well that only came from a list, nobody
 * knows.
 */
export const footOpen: Rule = {
  id: 'foot.open',
  figures: [],
  judge: (well) =>
    judgeScreened(well, ({ string, label }) => {
      if (string.capPath !== undefined) return judged([]);
      if (well.record.identity?.state === undefined)
        return unjudged({ what: 'state', path: 'identity.state' });
      const foot = string.pieces.at(-1)?.path ?? string.path;
      return judged([
        broken('foot.open', 'warning', foot, { string: label }, { fromM: string.bottomM }),
      ]);
    }),
};
