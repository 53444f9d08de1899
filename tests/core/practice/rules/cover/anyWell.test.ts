import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages } from '../../../../../core/base/language.ts';
import { valueAt } from '../../../../../core/base/recordPath.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import { sayFinding } from '../../../../../core/practice/catalogue.ts';
import { coverRules } from '../../../../../core/practice/rules/cover/index.ts';
import type { Verdict } from '../../../../../core/practice/rules/rule.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { garbageWell } from '../../../../laws/garbageWell.ts';
import { randomWell } from '../../../../laws/randomWell.ts';

function verdicts(record: WellRecord): Verdict[] {
  const well = { record, model: resolveWell(record), practice: practiceOf(record) };
  return coverRules.map((rule) => rule.judge(well));
}

describe('the rules of the cover over any well', () => {
  it('never throw, and leave no place of a sentence open', () => {
    const check = (record: WellRecord) => {
      for (const finding of verdicts(record).flatMap(({ findings }) => findings))
        for (const language of languages)
          expect(Object.values(sayFinding(finding, language)).join(' '), finding.code).not.toMatch(
            /[{}]|undefined|NaN|–/,
          );
    };
    fc.assert(fc.property(fc.oneof(garbageWell, randomWell), check), { seed: 7 });
  });

  it('lead to a row that is there, with depths in order', () => {
    const check = (record: WellRecord) => {
      for (const { path, fromM = 0, toM = fromM } of verdicts(record).flatMap(
        ({ findings }) => findings,
      )) {
        expect(valueAt(record, path), path).toBeDefined();
        expect(fromM, path).toBeLessThanOrEqual(toM);
      }
    };
    fc.assert(fc.property(randomWell, check), { seed: 8 });
  });

  it('say nothing where they do not apply', () => {
    const check = (record: WellRecord) => {
      for (const { applies, findings, missing } of verdicts(record))
        if (!applies) expect([...findings, ...missing]).toEqual([]);
    };
    fc.assert(fc.property(randomWell, check), { seed: 9 });
  });
});
