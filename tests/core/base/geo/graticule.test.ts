import { describe, expect, it } from 'vitest';
import { angleLabel, graticuleLines, graticuleStep } from '../../../../core/base/geo/graticule.ts';

const minute = 1 / 60;

describe('the step of a graticule', () => {
  it.each([
    [0.6, 5, 10 * minute],
    [3, 5, 1],
    [40, 5, 10],
    [0.02, 5, minute / 4],
    [0.1, 5, 2 * minute],
  ])('over %f° with at most %i lines is %f°', (span, most, step) => {
    expect(graticuleStep(span, most)).toBeCloseTo(step, 12);
  });

  it('is as wide as there is one where none is wide enough', () => {
    expect(graticuleStep(360, 5)).toBe(30);
  });
});

describe('the lines of a graticule', () => {
  it('stand at the multiples of the step, ends among them', () => {
    expect(graticuleLines(-7, -6, 0.5)).toEqual([-7, -6.5, -6]);
    expect(graticuleLines(1.21, 1.79, 0.5)).toEqual([1.5]);
    expect(graticuleLines(1.51, 1.79, 0.5)).toEqual([]);
  });
});

describe('the label of a line', () => {
  it.each([
    [12, 1, '12°'],
    [12.5, 0.5, '12°30′'],
    [-6 - 10 * minute, 10 * minute, '6°10′'],
    [7, 10 * minute, '7°00′'],
    [12 + 5 / 3600, 5 / 3600, '12°00′05″'],
    [59.999999999, minute, '60°00′'],
  ])('of %f° with a step of %f° is %s', (degrees, step, label) => {
    expect(angleLabel(degrees, step)).toBe(label);
  });
});
