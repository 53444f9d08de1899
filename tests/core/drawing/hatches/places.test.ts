import { describe, expect, it } from 'vitest';
import {
  alternating,
  jittered,
  scattered,
  shared,
  staggered,
} from '../../../../core/drawing/hatches/places.ts';
import { dash, dot } from '../../../../core/drawing/hatches/marks.ts';

const sides = { width: 12, height: 12 };

describe('staggered', () => {
  it('sets every second row off by half a step', () => {
    expect(staggered({ width: 4, height: 2 }, 2, 2)).toEqual([
      [0.5, 0.5],
      [2.5, 0.5],
      [1.5, 1.5],
      [3.5, 1.5],
    ]);
  });
});

describe('scattered', () => {
  it('gives the same places for the same seed and others for another', () => {
    expect(scattered(sides, 9, 1)).toEqual(scattered(sides, 9, 1));
    expect(scattered(sides, 9, 1)).not.toEqual(scattered(sides, 9, 2));
  });

  it('keeps places apart, across the seam too', () => {
    const places = scattered(sides, 30, 7);
    const round = (a: number, b: number) => Math.min(Math.abs(a - b), 12 - Math.abs(a - b));
    const gaps = places.flatMap((a, one) =>
      places.slice(one + 1).map((b) => Math.hypot(round(a[0], b[0]), round(a[1], b[1]))),
    );
    // Thirty places on a triangular lattice would lie 2.35 mm apart: sqrt(2 / sqrt 3 x 144 / 30).
    expect(Math.min(...gaps)).toBeGreaterThan(2.35 / 2);
  });
});

describe('jittered', () => {
  it('moves no place farther than it may', () => {
    const still = staggered(sides, 4, 4);
    jittered(still, 0.2, 3).forEach(([x, y], one) => {
      expect(Math.abs(x - still[one]![0])).toBeLessThanOrEqual(0.2);
      expect(Math.abs(y - still[one]![1])).toBeLessThanOrEqual(0.2);
    });
  });
});

describe('alternating', () => {
  it('never sets one mark alone in a column', () => {
    const marks = alternating({ width: 6, height: 6 }, 2, 4, [dash(1), dot()]);
    expect(marks.map((mark) => (mark.fill ? 'dot' : 'dash'))).toEqual([
      ...['dash', 'dot'],
      ...['dash', 'dot'],
      ...['dot', 'dash'],
      ...['dot', 'dash'],
    ]);
  });
});

describe('shared', () => {
  it('gives the first places to the first mark', () => {
    const marks = shared(scattered(sides, 3, 1), [
      [1, dash(1)],
      [2, dot()],
    ]);
    expect(marks.map((mark) => mark.fill !== undefined)).toEqual([false, true, true]);
  });
});
