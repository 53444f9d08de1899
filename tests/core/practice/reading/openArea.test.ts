import { describe, expect, it } from 'vitest';
import { openAreaPercentOf } from '../../../../core/practice/reading/openArea.ts';

const slotted = (slotWidth: number, slotSpacing: number) =>
  ({ kind: 'screen', slotWidth, slotSpacing, slotRows: 3 }) as const;

describe('the open area of a screen', () => {
  // Three rows, each slot a fifth of the circumference (published tutorial on well screens).
  it.each([
    [1, 10, 6],
    [1, 8, 7.5],
    [0.75, 8, 5.625],
    [0.5, 6, 5],
  ])('with slots of %d mm at %d mm is %d %%', (width, spacing, percent) => {
    expect(openAreaPercentOf(slotted(width, spacing))).toBeCloseTo(percent, 6);
  });

  it('is the one written, where there is one', () => {
    expect(openAreaPercentOf({ ...slotted(1, 10), openArea: 8 })).toBe(8);
  });

  it('is unknown where a measure of the slots is', () => {
    expect(openAreaPercentOf({ kind: 'screen', slotWidth: 1, slotSpacing: 10 })).toBeUndefined();
    expect(openAreaPercentOf({ kind: 'screen' })).toBeUndefined();
  });
});
