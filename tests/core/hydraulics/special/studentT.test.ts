import { describe, expect, it } from 'vitest';
import { studentT } from '../../../../core/hydraulics/special/studentT.ts';

/** Two-sided 95 % points of Student's t; Abramowitz and Stegun, table 26.10, from memory. */
const printed: readonly (readonly [number, number])[] = [
  [1, 12.706],
  [2, 4.303],
  [3, 3.182],
  [4, 2.776],
  [5, 2.571],
  [6, 2.447],
  [7, 2.365],
  [8, 2.306],
  [9, 2.262],
  [10, 2.228],
  [15, 2.131],
  [20, 2.086],
  [30, 2.042],
  [60, 2.0],
  [120, 1.98],
];

describe('Student’s t', () => {
  it.each(printed)('with %s degrees of freedom is %s', (freedom, t) => {
    expect(studentT(freedom)).toBeCloseTo(t, 3);
  });

  it('comes to that of the normal distribution', () => {
    expect(studentT(1000)).toBeCloseTo(1.962, 3);
    expect(studentT(1_000_000)).toBeCloseTo(1.96, 3);
  });

  it('is not known where no reading is left over', () => {
    expect(studentT(0)).toBeUndefined();
    expect(studentT(NaN)).toBeUndefined();
  });
});
