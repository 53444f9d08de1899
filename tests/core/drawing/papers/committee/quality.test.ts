import { describe, expect, it } from 'vitest';
import { layQuality } from '../../../../../core/drawing/papers/committee/quality.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { guidelinesOf } from '../../../../../core/water/guidelines/chooseGuidelines.ts';
import { kitIn, saidBy } from './kit.ts';

const said = (quality: WellRecord['quality']) => {
  const record: WellRecord = { schemaVersion: 1, ...(quality && { quality }) };
  return saidBy(layQuality(kitIn(), record, guidelinesOf(undefined), 88));
};

// Guideline values by WHO, Guidelines for drinking-water quality, 2022 (from memory): fluoride
// 1.5 mg/l, arsenic 0.01 mg/l, no E. coli in 100 ml.
describe('what the water’s tests found', () => {
  it('names day and laboratory, what is past its value and what nobody looked for', () => {
    const words = said([
      {
        takenAt: '2026-05-03T08:00+00:00',
        laboratory: 'Laboratory of Ŋorivé',
        results: [
          { parameter: 'Fluoride', value: 2.1, unit: 'mg/l' },
          { parameter: 'Arsenic', value: 0.002, unit: 'mg/l' },
        ],
      },
    ]);
    expect(words).toContain('Sample of 3 May 2026, tested by Laboratory of');
    expect(words).toMatch(/Past the guideline value for health: fluoride\./i);
    expect(words).toMatch(/Not past the value on that day: arsenic\./i);
    expect(words).toMatch(/Not tested for: E\. coli/);
  });

  it('says of bacteria that were found that they are past the value', () => {
    const results = [{ parameter: 'E. coli', value: 7, unit: 'per 100 ml' }];
    expect(said([{ takenAt: '2026-05-03', results }])).toMatch(/for health: E\. coli\./);
  });

  it('leaves a line for a laboratory that nobody wrote', () => {
    const results = [{ parameter: 'Arsenic', value: 0.002, unit: 'mg/l' }];
    expect(said([{ takenAt: '2026-05-03', results }])).toContain('3 May 2026. Tested by:');
  });

  it('says that there is no test where there is none, with lines for the first', () => {
    const words = said(undefined);
    expect(words).toContain('No test of this water is on record.');
    expect(words).toContain('Day of the first test:');
    expect(words).not.toContain('Not tested for');
  });

  it('always ends with who says whether people may drink it', () => {
    for (const words of [said(undefined), said([])])
      expect(words).toMatch(/The health office says if people may drink it\.$/);
  });
});
