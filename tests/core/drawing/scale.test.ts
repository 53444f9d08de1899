import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axisBottom,
  depthScales,
  paperLength,
  shownPart,
  shows,
  widthScaleFor,
  widthScales,
  yAt,
} from '../../../core/drawing/scale.ts';

const axis = { fromM: 10, toM: 40, scale: 200, top: 25 };

describe('scales', () => {
  // Source: ISO 5455, reductions 1:2, 1:5, 1:10 and their tens (from memory).
  it.each([...depthScales, ...widthScales])('1:%d is of the preferred series', (scale) => {
    expect([1, 2, 5]).toContain(scale / 10 ** Math.floor(Math.log10(scale)));
  });

  it('are chosen as the largest drawing that fits', () => {
    expect(widthScaleFor(165, 35)).toBe(5);
    expect(widthScaleFor(176, 35)).toBe(10);
    expect(widthScaleFor(175, 35)).toBe(5);
    expect(widthScaleFor(9000, 35)).toBe(50);
  });
});

describe('the depth axis', () => {
  it('puts a metre on 5 mm at 1:200 and on 10 mm at 1:100', () => {
    expect(paperLength(1, 200)).toBe(5);
    expect(paperLength(1, 100)).toBe(10);
  });

  it('begins and ends where its page does', () => {
    expect(yAt(axis, 10)).toBe(25);
    expect(yAt(axis, 22.5)).toBe(87.5);
    expect(axisBottom(axis)).toBe(175);
  });

  it('is the same line for every depth', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 300, noNaN: true }), (depthM) => {
        expect(yAt(axis, depthM) - yAt(axis, depthM - 1)).toBeCloseTo(5, 9);
      }),
      { seed: 4 },
    );
  });

  it('shows the part of a range that is its own, and nothing of one beside it', () => {
    expect(shownPart(axis, 5, 12)).toEqual({ fromM: 10, toM: 12 });
    expect(shownPart(axis, 39, 50)).toEqual({ fromM: 39, toM: 40 });
    expect(shownPart(axis, 0, 10)).toBeUndefined();
    expect(shownPart(axis, 40, 41)).toBeUndefined();
  });

  it('leaves a depth on the match line to the upper page, and shows each depth once', () => {
    const lower = { ...axis, fromM: 40, toM: 70 };
    for (const depthM of [10, 25, 40, 55, 70]) {
      const seen = [shows(axis, depthM, true), shows(lower, depthM, false)];
      expect(seen.filter(Boolean)).toHaveLength(1);
    }
    expect(shows(axis, 40, true)).toBe(true);
    expect(shows(axis, 9.99, true)).toBe(false);
  });
});
