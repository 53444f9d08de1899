import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages } from '../../../../../core/base/language.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { sayFinding } from '../../../../../core/practice/catalogue.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import { serviceRules } from '../../../../../core/practice/rules/service/index.ts';
import { wellStates } from '../../../../../core/record/identity.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { garbageWell } from '../../../../laws/garbageWell.ts';
import { randomWell } from '../../../../laws/randomWell.ts';

const anyWell = fc
  .tuple(fc.oneof(garbageWell, randomWell), fc.constantFrom(undefined, ...wellStates))
  .map(([well, state]): WellRecord => (state ? { ...well, identity: { state } } : well));

function verdictsOf(record: WellRecord) {
  const well = { record, model: resolveWell(record), practice: practiceOf(record) };
  return serviceRules.map((rule) => ({ rule, ...rule.judge(well) }));
}

describe('every rule of the site, the work and the handover', () => {
  it('says something of any record, in whole sentences of each language', () => {
    fc.assert(
      fc.property(anyWell, (record) => {
        for (const { rule, findings } of verdictsOf(record))
          for (const finding of findings) {
            expect(finding.code).toBe(rule.id);
            for (const language of languages)
              expect(Object.values(sayFinding(finding, language)).join(' ')).not.toMatch(
                /[{}]|undefined|NaN/,
              );
          }
      }),
      { seed: 11 },
    );
  });

  it('finds and misses nothing where it does not apply', () => {
    fc.assert(
      fc.property(anyWell, (record) => {
        for (const { applies, findings, missing } of verdictsOf(record))
          if (!applies) expect([findings, missing]).toEqual([[], []]);
      }),
      { seed: 12 },
    );
  });
});
