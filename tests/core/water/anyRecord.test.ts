import fc from 'fast-check';
import { expect, it } from 'vitest';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { planDisinfection } from '../../../core/water/disinfection/planDisinfection.ts';
import { guidelinesOf } from '../../../core/water/guidelines/chooseGuidelines.ts';
import { judgeQuality } from '../../../core/water/quality/judgeQuality.ts';
import { sitingPlan } from '../../../core/water/siting/sitingPlan.ts';
import { travelTimes } from '../../../core/water/siting/travelTimes.ts';
import { anyRecord } from '../record/anyRecord.ts';

it('whatever a record holds, the water is told without a fault, twice alike', () => {
  const set = guidelinesOf(undefined);
  const told = (record: WellRecord) => {
    const model = resolveWell(record);
    return [
      judgeQuality(record, set),
      travelTimes(record, model),
      sitingPlan(record.site),
      planDisinfection(record, model, practiceOf(record), { packVoids: true, riser: true }),
    ];
  };
  fc.assert(
    fc.property(anyRecord, (any) => {
      const record = any as WellRecord;
      expect(told(record)).toEqual(told(record));
    }),
    { numRuns: 150, seed: 7 },
  );
});
