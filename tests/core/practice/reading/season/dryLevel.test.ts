import { describe, expect, it } from 'vitest';
import { dryLevelM, lowestRestM } from '../../../../../core/practice/reading/water.ts';
import { record, resolve } from '../../../model/well.ts';

const rest = { reading: 9, datum: 'ground', state: 'static', at: '2025-09-15' } as const;

function dry(layingOut: object): number | undefined {
  const chapters = { levels: [rest], layingOut };
  return dryLevelM(record(chapters), resolve(chapters));
}

describe('the dry season’s level', () => {
  it('is the one that was said, before any estimate', () => {
    expect(dry({ drySeasonLevel: 12, seasonalSwing: 5 })).toBe(12);
  });

  it('is estimated from the swing: the whole of it where nobody tells when the water is low', () => {
    expect(dry({ seasonalSwing: 3 })).toBe(12);
  });

  it('adds nothing to a level that was read in a month of lowest water', () => {
    expect(dry({ seasonalSwing: 3, lowMonths: [9] })).toBe(9);
  });

  it('is unknown without a swing, and then the last rest level is the lowest known', () => {
    expect(dry({})).toBeUndefined();
    const chapters = { levels: [rest] };
    expect(lowestRestM(record(chapters), resolve(chapters))).toBe(9);
  });
});
