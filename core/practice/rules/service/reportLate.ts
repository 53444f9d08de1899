import type { WellRecord } from '../../../record/schema.ts';
import { figureOf, judged, notApplicable, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { daysBetween, isBefore } from './days.ts';
import { stageOf } from '../stage.ts';

/** The last day of work on the well, pad and pump included, as far as days were written. */
function workEndedOn({ bore, headworks, pump }: WellRecord): string | undefined {
  return [bore?.finishedOn, headworks?.builtOn, pump?.installedOn]
    .filter((day) => day !== undefined)
    .reduce<string | undefined>(
      (last, day) => (last !== undefined && isBefore(day, last) ? last : day),
      undefined,
    );
}

/** The supervisor signs the record in time for the report, of holes that gave no water as well. */
export const reportLate: Rule = {
  id: 'report.late',
  figures: ['reportDays'],
  judge(well) {
    const { record } = well;
    if (stageOf(record) === 'coming') return notApplicable;
    const at = (record.marks ?? []).findIndex(({ role }) => role === 'supervisor');
    const signedOn = record.marks?.[at]?.on;
    if (at < 0) return notApplicable;
    if (signedOn === undefined) return unjudged({ what: 'dates', path: `marks[${at}].on` });
    const endedOn = workEndedOn(record);
    if (endedOn === undefined) return unjudged({ what: 'dates', path: 'bore.finishedOn' });
    const dueDays = figureOf(well, 'reportDays');
    const days = daysBetween(endedOn, signedOn);
    if (days <= dueDays) return judged([]);
    const values = { endedOn, signedOn, days, dueDays };
    return judged([broken('report.late', 'note', `marks[${at}].on`, values)]);
  },
};
