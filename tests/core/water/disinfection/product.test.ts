import { describe, expect, it } from 'vitest';
import { cylinderLitres } from '../../../../core/base/units.ts';
import { productGrams, productMillilitres } from '../../../../core/water/disinfection/product.ts';

const tolerance = 0.005;

describe('grams of product', () => {
  // Well cleaning notes of emergency manuals, worked cases, and arithmetic: V · dose / strength.
  it.each([
    ['1 m³ at 100 mg/l with 70 %', 1000, 100, 70, 142.9],
    ['5 m³ at 100 mg/l with 70 %', 5000, 100, 70, 714],
    ['30 m in 110 × 4.2 pipe at 50 mg/l with 65 %', 243.2, 50, 65, 18.7],
    ['the same with 15 m of pack', 305.6, 50, 65, 23.5],
    ['20 l of a 1 % stock with 70 %', 20, 10_000, 70, 286],
  ])('%s', (_, litres, dose, strength, grams) => {
    expect(Math.abs(productGrams(litres, dose, strength) - grams)).toBeLessThan(grams * tolerance);
  });

  it('of the dug well of the worked case: 3.5 m of water at 1.40 m across hold 5.39 m³', () => {
    expect(Math.abs(cylinderLitres(1400, 3.5) - 5390)).toBeLessThan(5390 * tolerance);
  });
});

it('millilitres of bleach: 200 l at 50 mg/l are 10 g of chlorine, 200 ml at 5 % (arithmetic)', () => {
  expect(productMillilitres(200, 50, 5)).toBeCloseTo(200, 9);
});
