import { describe, expect, it } from 'vitest';
import { deepFreeze } from '../../../../core/record/freeze.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { guidelinesOf } from '../../../../core/water/guidelines/chooseGuidelines.ts';
import { judgeQuality } from '../../../../core/water/quality/judgeQuality.ts';

const sampled = (): WellRecord => ({
  schemaVersion: 1,
  quality: [{ results: [{ parameter: 'Arsenic', value: 0.02, unit: 'mg/l' }] }],
});

describe('the samples of a record', () => {
  it('are judged once by a set while they are frozen', () => {
    const { quality } = deepFreeze(sampled());
    const set = guidelinesOf(undefined);
    const first = judgeQuality({ schemaVersion: 1, quality: quality! }, set);
    expect(judgeQuality({ schemaVersion: 1, quality: quality! }, set)).toBe(first);
    expect(judgeQuality({ schemaVersion: 1, quality: quality! }, { ...set })).not.toBe(first);
    expect(judgeQuality({ schemaVersion: 1, quality: quality! }, { ...set })).toEqual(first);
  });

  it('are judged anew while they can change', () => {
    const record = sampled();
    const set = guidelinesOf(undefined);
    expect(judgeQuality(record, set)).not.toBe(judgeQuality(record, set));
  });
});

describe('the set that samples are read by', () => {
  it('is the very same for the same files, and not for other ones', () => {
    expect(guidelinesOf('who2022')).toBe(guidelinesOf(undefined));
    expect(guidelinesOf(undefined, [])).not.toBe(guidelinesOf(undefined));
    expect(guidelinesOf(undefined, [])).toEqual(guidelinesOf(undefined));
  });
});
