import { expect, it } from 'vitest';
import { scaleBarM } from '../../../../core/base/geo/scaleBar.ts';

it.each([
  [1000, 1000],
  [999.99, 500],
  [4999, 2000],
  [5000, 5000],
  [37_000, 20_000],
  [0.7, 0.5],
])('a scale bar of at most %f m is %f m long', (most, length) => {
  expect(scaleBarM(most)).toBeCloseTo(length, 9);
});
