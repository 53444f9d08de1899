import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axisBottom,
  breakHeight,
  depthAt,
  depthScales,
  paperLength,
  shownMiddle,
  shownPart,
  shows,
  stretchesOf,
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

describe('a broken axis', () => {
  const broken = { ...axis, leftOut: [{ fromM: 15, toM: 30 }] };

  it('is true to scale in each stretch, and a break high between them', () => {
    expect(yAt(broken, 15)).toBe(50);
    expect(yAt(broken, 30)).toBe(50 + breakHeight);
    expect(yAt(broken, 32) - yAt(broken, 31)).toBeCloseTo(5, 9);
    expect(axisBottom(broken)).toBe(50 + breakHeight + 50);
    expect(stretchesOf(broken)).toEqual([
      { fromM: 10, toM: 15, top: 25 },
      { fromM: 30, toM: 40, top: 50 + breakHeight },
    ]);
  });

  it('leads from each depth to its height and back, also within a break and beyond the ends', () => {
    const depths = fc.double({ min: -20, max: 90, noNaN: true });
    fc.assert(
      fc.property(depths, depths, (a, b) => {
        expect(depthAt(broken, yAt(broken, a))).toBeCloseTo(a, 6);
        if (a < b) expect(yAt(broken, a)).toBeLessThanOrEqual(yAt(broken, b));
      }),
      { seed: 6 },
    );
  });

  it('shows nothing that it leaves out, but the ends of the break', () => {
    const seen = [14.9, 15, 15.1, 29.9, 30, 30.1].filter((depthM) => shows(broken, depthM, true));
    expect(seen).toEqual([14.9, 15, 30, 30.1]);
  });

  it('points at the middle of a range beside the break', () => {
    expect(shownMiddle(axis, { fromM: 12, toM: 32 })).toBe(22);
    const middle = shownMiddle(broken, { fromM: 12, toM: 32 });
    expect(shows(broken, middle, true)).toBe(true);
    expect(shownMiddle(broken, { fromM: 31, toM: 35 })).toBeCloseTo(33, 9);
  });
});
