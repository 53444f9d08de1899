import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  linearAxis,
  logAxis,
  shareAt,
  ticksOf,
} from '../../../../../core/drawing/parts/plots/axis.ts';
import { kit } from '../../trial.ts';

const labels = (axis: Parameters<typeof ticksOf>[1], most = 8) =>
  ticksOf(kit, axis, most).flatMap(({ label }) => label ?? []);

describe('a linear axis', () => {
  it('ends on round values and is named at ones, twos and fives', () => {
    const axis = linearAxis([0.4, 1.76]);
    expect([axis.from, axis.to]).toEqual([0, 2]);
    expect(labels(axis)).toEqual(['0.0', '0.5', '1.0', '1.5', '2.0']);
  });

  it('has a tick at each of its ends', () => {
    const most = fc.double({ min: 0.001, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(most, (value) => {
        const axis = linearAxis([value]);
        const ticks = ticksOf(kit, axis, 6);
        expect(ticks[0]!.value).toBeCloseTo(axis.from, 9);
        expect(ticks.at(-1)!.value / axis.to).toBeCloseTo(1, 9);
      }),
    );
  });

  it('goes below nothing where values do', () => {
    expect(linearAxis([-3, 4]).from).toBeLessThanOrEqual(-3);
  });

  it('holds every value', () => {
    const value = fc.double({ min: -1e9, max: 1e12, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 20 }), (values) => {
        const axis = linearAxis(values);
        for (const one of values) {
          const share = shareAt(axis, one);
          expect(share).toBeGreaterThan(-1e-6);
          expect(share).toBeLessThan(1 + 1e-6);
        }
      }),
    );
  });
});

describe('a logarithmic axis', () => {
  it('is named at powers of ten, over few of them at twos and fives too', () => {
    expect(labels(logAxis([1, 90]))).toEqual(['1', '2', '5', '10', '20', '50', '100']);
    expect(labels(logAxis([1, 9e4]))).toEqual(['1', '10', '100', '1000', '10000', '100000']);
  });

  it('sets each decade as far apart as the next', () => {
    const axis = logAxis([1, 1000]);
    expect(shareAt(axis, 10)).toBeCloseTo(1 / 3, 12);
    expect(shareAt(axis, 100)).toBeCloseTo(2 / 3, 12);
  });

  it('leaves out what no logarithm has', () => {
    expect(logAxis([0, -4, 3, 30])).toMatchObject({ from: 2, to: 50 });
    expect(logAxis([])).toMatchObject({ from: 1, to: 10 });
  });

  it('holds every value above nothing', () => {
    const value = fc.double({ min: 1e-12, max: 1e15, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 20 }), (values) => {
        const axis = logAxis(values);
        for (const one of values) {
          const share = shareAt(axis, one);
          expect(share).toBeGreaterThan(-1e-6);
          expect(share).toBeLessThan(1 + 1e-6);
        }
      }),
    );
  });
});
