import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { known } from '../../../core/base/known.ts';
import { languages } from '../../../core/base/language.ts';
import { Memory } from '../../../core/base/memory.ts';
import { judgedWell } from '../../../core/judging/judgedWell.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { catalogueOf, sayFinding } from '../../../core/practice/catalogue.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import { waterRules } from '../../../core/practice/rules/water/index.ts';
import { waterParameters } from '../../../core/practice/rules/water/parameters.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { guidelinesOf } from '../../../core/water/guidelines/chooseGuidelines.ts';
import { garbageWell } from '../../laws/garbageWell.ts';
import { randomWell } from '../../laws/randomWell.ts';
import { demoWells } from '../../sheets/wells.ts';
import { wellWithDryLevel } from '../water/pump/wells.ts';

const ids = waterRules.map(({ id }) => id);

function verdictsOf(record: WellRecord, memory = new Memory()) {
  const { verdicts } = judgedWell(record, resolveWell(record), practiceOf(record), { memory });
  return verdicts.filter(({ rule }) => ids.includes(rule.id));
}

/** What the rules on water say of a record: sentences, and what they miss. */
function saidOf(record: WellRecord): string[] {
  return verdictsOf(record).flatMap(({ rule, findings, missing }) => [
    ...findings.map((finding) => `${rule.id} ${finding.path}: ${sayFinding(finding).sentence}`),
    ...missing.map(({ what, path }) => `${rule.id} misses ${what} ${path}`),
  ]);
}

type Result = NonNullable<NonNullable<WellRecord['quality']>[number]['results']>[number];

const whole = guidelinesOf(undefined).parameters.filter(({ beforeHandover }) => beforeHandover);

/** A completed well whose sample has all that is asked for, harmless, and these results instead. */
function sampled(...results: Result[]): WellRecord {
  const harmless = whole.map(({ names, unit, as }) => ({
    parameter: names.en,
    value: names.en === 'pH' ? 7 : 0,
    unit,
    ...(as === undefined ? {} : { as }),
  }));
  const others = harmless.filter(
    ({ parameter }) => !results.some((one) => one.parameter === parameter),
  );
  return {
    schemaVersion: 1,
    identity: { state: 'completed' },
    quality: [{ takenAt: '2026-02-10', results: [...results, ...others] }],
  };
}

const first = 'quality[0].results[0]';

describe('results of water samples in the judgement', () => {
  // Guideline values of WHO 2022: E. coli none in 100 ml, fluoride 1.5, nitrate 50 as NO3 [V];
  // arsenic 0.01 [V]; iron has no health-based value, 0.3 mg/l is of taste and stains.
  it.each([
    [
      { parameter: 'E. coli', value: 3, unit: 'CFU/100 ml' },
      'E. coli: the last reading is 3 CFU/100 ml, above the health-based value of 0 CFU/100 ml.',
    ],
    [
      { parameter: 'arsenic', value: 12, unit: 'µg/l' },
      'Arsenic: the last reading is 0.012 mg/l, above the health-based value of 0.01 mg/l.',
    ],
    [
      { parameter: 'fluoride', value: 1.6, unit: 'mg/l' },
      'Fluoride: the last reading is 1.6 mg/l, above the health-based value of 1.5 mg/l.',
    ],
    [
      { parameter: 'nitrate', value: 12, unit: 'mg/l', as: 'N' },
      'Nitrate: the last reading is 53.12 mg/l, above the health-based value of 50 mg/l.',
    ],
  ] as const)('say %o', (result, sentence) => {
    expect(saidOf(sampled(result))).toEqual([`quality.aboveHealth ${first}.value: ${sentence}`]);
  });

  it('are silent at the value itself, and on iron above taste', () => {
    expect(saidOf(sampled({ parameter: 'arsenic', value: 0.01, unit: 'mg/l' }))).toEqual([]);
    expect(saidOf(sampled({ parameter: 'fluoride', value: 1.5, unit: 'mg/l' }))).toEqual([]);
    expect(saidOf(sampled({ parameter: 'iron', value: 3, unit: 'mg/l' }))).toEqual([]);
  });

  it('miss the unit of a reading, or a detection limit that is low enough', () => {
    expect(saidOf(sampled({ parameter: 'arsenic', value: 5 }))).toEqual([
      `quality.aboveHealth misses waterResult ${first}`,
    ]);
    const coarse = { parameter: 'arsenic', value: 0.05, unit: 'mg/l', below: true };
    expect(saidOf(sampled(coarse))).toEqual([`quality.aboveHealth misses waterResult ${first}`]);
  });

  it('go by the last reading', () => {
    const well = sampled({ parameter: 'fluoride', value: 1, unit: 'mg/l' });
    const earlier = {
      takenAt: '2025-02-10',
      results: [{ parameter: 'fluoride', value: 2, unit: 'mg/l' }],
    };
    expect(saidOf({ ...well, quality: [earlier, ...(well.quality ?? [])] })).toEqual([]);
  });

  it('say what nobody looked for', () => {
    const results = [{ parameter: 'E. coli', value: 0, unit: 'CFU/100 ml' }];
    const said = saidOf({ ...sampled(), quality: [{ results }] });
    expect(said).toHaveLength(whole.length - 1);
    for (const one of said) expect(one).toMatch(/^quality\.untested quality\[0\]\.results: /);
  });

  it('are the same from memory, which forgets a sample that changed', () => {
    const memory = new Memory();
    const good = sampled();
    const bad = sampled({ parameter: 'fluoride', value: 2, unit: 'mg/l' });
    for (const well of [good, bad, good, bad])
      expect(verdictsOf(well, memory)).toEqual(verdictsOf(well));
  });

  it('have a word for each parameter of the shipped set, the one of the set', () => {
    const { parameters } = guidelinesOf(undefined);
    expect(waterParameters).toEqual(parameters.map(({ id }) => id));
    for (const language of languages)
      expect(catalogueOf(language).parameters).toEqual(
        Object.fromEntries(parameters.map(({ id, names }) => [id, names[language]])),
      );
  });
});

describe('the kind of pump in the judgement', () => {
  const pumped = (kind: NonNullable<WellRecord['pump']>['kind'], dryM: number): WellRecord => ({
    ...wellWithDryLevel(dryM),
    pump: { kind },
    tests: [{ kind: 'constantRate', rate: 2 }],
  });
  const ofPump = (record: WellRecord) => saidOf(record).filter((one) => one.startsWith('suits.'));

  // Direct action: 15 m at most; deepwell lever 50 m, from IS 15500; kinds.ts has the sources.
  it('is said where the water stands too deep for it', () => {
    expect(ofPump(pumped('directAction', 18))).toEqual([
      'suits.lift pump.kind: The water is to be lifted 20.60 m or more; a pump of this kind lifts 15.00 m at most.',
    ]);
    expect(ofPump(pumped('deepwellLever', 18))).toEqual([]);
  });

  it('is said where the casing is too narrow for it', () => {
    const well = pumped('deepwellLever', 18);
    const slim = {
      ...well,
      strings: [{ components: [{ kind: 'plain' as const, length: 39, outside: 75, wall: 3.6 }] }],
    };
    expect(ofPump(slim)).toEqual([
      'suits.casing pump.kind: The well is 67.8 mm wide inside where the pump passes; a pump of this kind takes 100 mm at least.',
    ]);
  });

  it('is said where it gives the users too little in a day', () => {
    const well = pumped('bucketAndWindlass', 12);
    const many = {
      ...well,
      site: { users: 900 },
      tests: [{ kind: 'constantRate' as const, rate: 20 }],
    };
    expect(ofPump(many)).toHaveLength(1);
    expect(ofPump(many)[0]).toMatch(/^suits\.flow pump\.kind: /);
  });

  it('misses the level and the users, and is not judged where it is none of the kinds', () => {
    const { schemaVersion, identity, bore, strings, pump } = pumped('directAction', 5);
    const bare = { schemaVersion, ...known({ identity, bore, strings, pump }) };
    expect(ofPump(bare)).toContain('suits.lift misses restLevel levels');
    expect(ofPump(bare)).toContain('suits.flow misses users site.users');
    expect(ofPump(pumped('other', 40))).toEqual([]);
  });
});

describe('wells judged with their water', () => {
  it('say nothing of the demo wells beside their stories', () => {
    const found = demoWells.flatMap(([name, record]) =>
      verdictsOf(record).flatMap(({ findings }) => findings.map(({ code }) => [name, code])),
    );
    expect(found).toEqual([]);
  });

  it('throw on no record and leave no place of a sentence open', () => {
    const check = (record: WellRecord) => {
      for (const { findings } of verdictsOf(record))
        for (const finding of findings)
          for (const language of languages)
            expect(Object.values(sayFinding(finding, language)).join(' ')).not.toMatch(
              /[{}]|undefined|NaN|Infinity/,
            );
    };
    fc.assert(fc.property(fc.oneof(garbageWell, randomWell), check), { seed: 23 });
  });
});
