import type { WellRecord } from '../../../record/schema.ts';
import { judged, notApplicable, unjudged, type Rule, type Verdict } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { ofCompleted, ofGivenUp, type Expected } from './handoverItems.ts';
import { missingState } from '../stage.ts';

function lacking(record: WellRecord, expected: readonly Expected[]): Verdict {
  return judged(
    expected
      .filter(({ isThere }) => !isThere(record))
      .map(({ item, path }) => broken('handover.incomplete', 'note', path, { item })),
  );
}

/** What a record still lacks of what a well is handed over with. */
export const handoverIncomplete: Rule = {
  id: 'handover.incomplete',
  figures: [],
  judge({ record }) {
    switch (record.identity?.state) {
      case undefined:
        return unjudged(missingState);
      case 'completed':
        return lacking(record, ofCompleted);
      case 'dry':
      case 'abandonedAndSealed':
        return lacking(record, ofGivenUp);
      default:
        return notApplicable;
    }
  },
};
