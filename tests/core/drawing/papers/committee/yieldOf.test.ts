import { describe, expect, it } from 'vitest';
import { yieldOf } from '../../../../../core/drawing/papers/committee/yieldOf.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { well } from '../../../../demo-data/wells.ts';

const given = (record: WellRecord) => yieldOf(record, resolveWell(record), practiceOf(record));
const bare = (rest: Partial<WellRecord>): WellRecord => ({ schemaVersion: 1, ...rest });

describe('the yield in buckets of 20 litres an hour', () => {
  it('is what the pump in use gives, where no test says that the well gives less', () => {
    // 0.9 m³/h are 900 litres, 45 buckets of 20.
    const { bucketsAnHour, basis } = given(bare({ pump: { rate: 0.9 } }))!;
    expect([bucketsAnHour, basis]).toEqual([45, 'pump']);
    expect(given(well('hand-drilled-32m.json'))).toMatchObject({
      bucketsAnHour: 45,
      basis: 'pump',
    });
  });

  it('is no more than the safe rate of the tests', () => {
    const found = given(well('shallow-direct-action-9m.json'))!;
    expect(found.basis).toBe('safe');
    expect(found.bucketsAnHour).toBeLessThan(50);
  });

  it('is that of the last constant rate where no safe rate can be reckoned', () => {
    const tests = [
      { kind: 'constantRate' as const, rate: 1 },
      { kind: 'constantRate' as const, rate: 1.23 },
      { kind: 'recovery' as const, rate: 4 },
    ];
    expect(given(bare({ tests }))).toMatchObject({ bucketsAnHour: 61, basis: 'tested' });
  });

  it('is said to be planned where it was laid out for', () => {
    const planned = given(bare({ layingOut: { rate: 1 } }));
    expect(planned).toMatchObject({ bucketsAnHour: 50, basis: 'planned' });
  });

  it('is not known where nothing tells it', () => {
    expect(given(bare({}))).toBeUndefined();
  });
});
