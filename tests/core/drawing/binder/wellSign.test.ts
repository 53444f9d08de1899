import { expect, it } from 'vitest';
import { drawWellSign, signHalf } from '../../../../core/drawing/binder/map/wellSign.ts';
import { wellSigns } from '../../../../core/drawing/map/signs.ts';
import type { PathItem } from '../../../../core/drawing/items.ts';
import type { WellState } from '../../../../core/record/identity.ts';
import { extentOf } from '../../../sheets/extent.ts';

const states = Object.keys(wellSigns) as (WellState | '')[];

it.each(states)('stands about its point, within its box: %s', (state) => {
  const sign = drawWellSign(state, [50, 70]) as PathItem;
  const [left, top, right, foot] = extentOf(sign);
  expect((left + right) / 2).toBeCloseTo(50, 6);
  expect(Math.min(left, top - 20)).toBeGreaterThanOrEqual(50 - signHalf);
  expect(Math.max(right, foot - 20)).toBeLessThanOrEqual(50 + signHalf);
  expect(right - left).toBeGreaterThan(signHalf);
});

it('is told apart by shape and filling alone', () => {
  const drawn = states.map((state) => JSON.stringify(drawWellSign(state, [0, 0])));
  expect(new Set(drawn).size).toBe(states.length);
});
