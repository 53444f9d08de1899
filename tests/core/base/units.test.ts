import { describe, expect, it } from 'vitest';
import { cylinderLitres, ringLitres } from '../../../core/base/units.ts';

describe('cylinderLitres', () => {
  // A hole of 200 mm holds 31.4 litres a metre: pi/4 x 0.2 x 0.2 x 1000 (common practice).
  it('knows the litres of a metre of hole', () => {
    expect(cylinderLitres(200, 1)).toBeCloseTo(31.416, 3);
  });

  it('grows with the square of the diameter and with the length', () => {
    expect(cylinderLitres(200, 3) / cylinderLitres(100, 1)).toBeCloseTo(12, 12);
    expect(cylinderLitres(0, 10)).toBe(0);
  });
});

describe('ringLitres', () => {
  // pi/4 x (0.25^2 - 0.125^2) x 10 m x 1000 = 368.2 litres, worked by hand.
  it('is the hole less the pipe', () => {
    expect(ringLitres(250, 125, 10)).toBeCloseTo(368.16, 2);
    expect(ringLitres(125, 125, 10)).toBe(0);
  });
});
