import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valueAt } from '../../../../../core/base/recordPath.ts';
import { languages } from '../../../../../core/base/language.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import { catalogueOf, sayFinding } from '../../../../../core/practice/catalogue.ts';
import { casingRules } from '../../../../../core/practice/rules/casing/index.ts';
import type { Verdict } from '../../../../../core/practice/rules/rule.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { garbageWell } from '../../../../laws/garbageWell.ts';
import { randomWell } from '../../../../laws/randomWell.ts';

function verdicts(record: WellRecord): Verdict[] {
  const well = { record, model: resolveWell(record), practice: practiceOf(record) };
  return casingRules.map(({ judge }) => judge(well));
}

const placesIn = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort();

describe('the rules on casing over any well', () => {
  it('never throw, and leave no place of a sentence open', () => {
    const check = (record: WellRecord) => {
      for (const finding of verdicts(record).flatMap(({ findings }) => findings))
        for (const language of languages)
          expect(Object.values(sayFinding(finding, language)).join(' '), finding.code).not.toMatch(
            /[{}]|undefined|NaN|Infinity/,
          );
    };
    fc.assert(fc.property(fc.oneof(garbageWell, randomWell), check), { seed: 11 });
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
    fc.assert(fc.property(randomWell, check), { seed: 12 });
  });

  it('name the same values in every language', () => {
    const { findings: english } = catalogueOf('en');
    for (const { id } of casingRules)
      for (const language of languages)
        for (const part of ['title', 'sentence', 'why', 'todo'] as const)
          expect(placesIn(catalogueOf(language).findings[id][part]), `${id} ${language}`).toEqual(
            placesIn(english[id][part]),
          );
  });
});
