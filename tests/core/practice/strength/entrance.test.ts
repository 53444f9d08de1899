import { describe, expect, it } from 'vitest';
import { entranceMs } from '../../../../core/practice/strength/entrance.ts';

describe('the velocity of water in the slots', () => {
  // TM 5-813-1: the rate over the area of the slots; half of them blocked (Driscoll 1986, from
  // memory). Rate m³/h, length m, diameter mm, open %, share that stays open, m/s.
  it.each([
    [1, 3, 110, 6, 1, 0.00447],
    [1, 3, 110, 6, 0.5, 0.00893],
    [5.4, 6, 125, 4, 1, 0.0159],
    [5.4, 6, 125, 4, 0.5, 0.0318],
    // 0.03 m/s in slots of 0.5 mm at 6 mm, each row a fifth round: 1.87 m³/h a metre.
    [1.87, 1, 110, 5, 1, 0.03],
    [2.24, 1, 110, 6, 1, 0.03],
    [2.8, 1, 110, 7.5, 1, 0.03],
  ])(
    'of %d m³/h through %d m of %d mm, %d %% open',
    (rate, lengthM, outsideMm, open, share, ms) => {
      const speed = entranceMs(rate, [{ lengthM, outsideMm, openPercent: open }], share);
      expect(Math.abs(speed / ms - 1)).toBeLessThan(0.005);
    },
  );

  it('is shared by several screens', () => {
    const face = { lengthM: 3, outsideMm: 110, openPercent: 6 };
    expect(entranceMs(2, [face, face], 1)).toBeCloseTo(entranceMs(1, [face], 1), 12);
  });
});
