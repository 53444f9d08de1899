import { describe, expect, it } from 'vitest';
import { dryEstimate } from '../../../../../core/practice/reading/season/dryEstimate.ts';
import {
  monthsIntoYear,
  shareOverLowest,
} from '../../../../../core/practice/reading/season/yearlySwing.ts';

describe('where a day stands in its year', () => {
  it('counts months from January', () => {
    expect(monthsIntoYear('2026-01-01')).toBeCloseTo(0.5 / 31, 9);
    expect(monthsIntoYear('2026-07-01T08:00:00Z')).toBeCloseTo(6 + 0.5 / 31, 9);
    expect(monthsIntoYear('2024-02-29')).toBeCloseTo(1 + 28.5 / 29, 9);
    expect(monthsIntoYear('soon')).toBeUndefined();
  });
});

describe('how high a level stands over its lowest', () => {
  it('is nothing in the months of low', () => {
    expect(shareOverLowest(3.5, [3, 4, 5])).toBe(0);
  });

  it('is all of the swing in the middle between two times of low', () => {
    // Low from March to May; June to February are nine months, their middle is mid October.
    expect(shareOverLowest(9.5, [3, 4, 5])).toBeCloseTo(1, 9);
    expect(shareOverLowest(5, [3, 4, 5])).toBeCloseTo(0, 9);
    expect(shareOverLowest(5 + 2.25, [3, 4, 5])).toBeCloseTo(0.5, 9);
  });

  it('goes over the turn of the year', () => {
    expect(shareOverLowest(0.5, [12, 1, 2])).toBe(0);
    expect(shareOverLowest(11.5, [12, 1, 2])).toBe(0);
    expect(shareOverLowest(6.5, [12, 1, 2])).toBeCloseTo(1, 9);
    expect(shareOverLowest(1, [4])).toBeCloseTo(shareOverLowest(6, [4])!, 9);
  });

  it('makes two waves of two rainy seasons', () => {
    // Low in February and August: high in mid May and mid November.
    expect(shareOverLowest(4.5, [2, 8])).toBeCloseTo(1, 9);
    expect(shareOverLowest(10.5, [2, 8])).toBeCloseTo(1, 9);
  });

  it('is not known without months of low, nor where all are', () => {
    expect(shareOverLowest(4, [])).toBeUndefined();
    expect(shareOverLowest(4, [13, 0])).toBeUndefined();
    expect(shareOverLowest(4, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])).toBeUndefined();
  });

  it('lies between nothing and all on every day', () => {
    for (let position = 0; position < 12; position += 0.05)
      for (const low of [[1], [4, 5], [12, 1], [2, 8], [3, 6, 7, 11]]) {
        const share = shareOverLowest(position, low)!;
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }
  });
});

describe('the dry season’s level', () => {
  const season = { swingM: 3, lowMonths: [3, 4, 5] };

  it('is the one read, where it was read in a month of low', () => {
    expect(dryEstimate(12, '2026-04-10', season)).toEqual({
      levelM: 12,
      deepestM: 15,
      assumptions: ['swingAsGiven', 'readAtLow', 'yearsAlike'],
    });
  });

  it('is deeper by all of the swing, where it was read at the highest', () => {
    const estimate = dryEstimate(12, '2026-10-16', season);
    expect(estimate.levelM).toBeCloseTo(15, 2);
    expect(estimate.assumptions).toContain('waveBetweenLows');
  });

  it('counts what was read as the highest, where day or months are not known', () => {
    const whole = { levelM: 15, deepestM: 15 };
    expect(dryEstimate(12, undefined, season)).toMatchObject(whole);
    expect(dryEstimate(12, '2026-04-10', { swingM: 3 })).toMatchObject(whole);
    expect(dryEstimate(12, undefined, season).assumptions).toContain('readAtHigh');
  });

  it('never lies above what was read, nor under it by more than the swing', () => {
    for (let month = 1; month <= 12; month += 1) {
      const { levelM } = dryEstimate(12, `2026-${String(month).padStart(2, '0')}-15`, season);
      expect(levelM).toBeGreaterThanOrEqual(12);
      expect(levelM).toBeLessThanOrEqual(15);
    }
  });
});
