import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { catalogueOf, sayFinding } from '../../core/practice/catalogue.ts';
import { holdPractice } from '../../core/practice/holdPractice.ts';
import { judgedWell } from '../../core/judging/judgedWell.ts';
import type { Judgement } from '../../core/practice/judgeWell.ts';
import { rules } from '../../core/practice/rules/index.ts';
import { shippedPractices } from '../../core/practice/shippedPractices.ts';
import { readRecord } from '../../core/record/read.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { chapterFor } from '../../renderer/editors/chapters/index.ts';
import { fileNames, well } from '../demo-data/wells.ts';
import { realWells } from '../real/realWells.ts';
import { garbageWell } from './garbageWell.ts';
import { randomWell } from './randomWell.ts';

const practices = shippedPractices.map(({ id }) => {
  const held = holdPractice(id, shippedPractices);
  if (!held.ok) throw new Error(held.error.sentence);
  return held.value;
});

const known: readonly WellRecord[] = [
  ...realWells().map(({ record }) => record),
  ...fileNames.map(well),
];

/** What reading leaves of a well: rules see no other records. Names are not the program's words. */
function asRead(well: object): WellRecord {
  const { strings = [] } = well as WellRecord;
  const named = { ...well, strings: strings.map((string) => ({ ...string, name: 'main' })) };
  const reading = readRecord(named);
  if (reading.kind !== 'ok') throw new Error('a well was not read');
  return reading.record;
}

/** Holds for every judgement of every well, be it invented, published or garbage. */
function holds(law: (judgement: Judgement, record: WellRecord) => void) {
  const judge = (record: WellRecord) => {
    const model = resolveWell(record);
    for (const practice of practices) law(judgedWell(record, model, practice), record);
  };
  known.forEach(judge);
  const wells = fc.oneof(garbageWell, randomWell).map(asRead);
  fc.assert(fc.property(wells, judge), { seed: 11, numRuns: 150 });
}

describe('rules, over wells of any kind', () => {
  it('find nothing and miss nothing where they do not apply', () => {
    holds(({ verdicts }) => {
      for (const { applies, findings, missing, rule } of verdicts)
        if (!applies) expect([findings, missing], rule.id).toEqual([[], []]);
    });
  });

  it('say whole sentences in each language, of depths that are numbers in order', () => {
    holds(({ findings }) => {
      for (const finding of findings) {
        const { code, fromM, toM } = finding;
        for (const language of languages)
          expect(Object.values(sayFinding(finding, language)).join(' '), code).not.toMatch(
            /[{}]|undefined|NaN|Infinity/,
          );
        if (fromM !== undefined) expect(Number.isFinite(fromM), code).toBe(true);
        if (fromM !== undefined && toM !== undefined)
          expect(toM, code).toBeGreaterThanOrEqual(fromM);
      }
    });
  });

  it('lead to a chapter with all that they find or miss', () => {
    holds(({ verdicts }) => {
      for (const { rule, findings, missing } of verdicts)
        for (const { path } of [...findings, ...missing])
          expect(chapterFor(path), `${rule.id}: ${path}`).toBeDefined();
    });
  });

  it('name what they miss in each language', () => {
    holds(({ verdicts }) => {
      for (const { missing } of verdicts)
        for (const { what } of missing)
          for (const language of languages)
            expect(catalogueOf(language).missing[what], what).not.toBe('');
    });
  });

  it('say the same of the same well, and nothing of it where a practice does not ask for them', () => {
    const [practice] = practices;
    for (const record of known) {
      const model = resolveWell(record);
      const whole = judgedWell(record, model, practice!);
      expect(judgedWell(record, model, practice!)).toEqual(whole);
      for (const { id } of rules) {
        if (!whole.findings.some(({ code }) => code === id)) continue;
        const without = judgedWell(record, model, { ...practice!, without: [id] });
        const others = whole.verdicts.filter(({ rule }) => rule.id !== id);
        expect(without.verdicts).toEqual(others);
      }
    }
  });
});
