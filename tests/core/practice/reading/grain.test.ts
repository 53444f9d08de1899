import { describe, expect, it } from 'vitest';
import { grainOf, isNoFiner } from '../../../../core/practice/reading/grain.ts';
import type { LogInterval } from '../../../../core/record/log.ts';

const layer = (changed: Partial<LogInterval>): LogInterval => ({
  from: 10,
  to: 12,
  material: 'sand',
  ...changed,
});

describe('the grain of a layer', () => {
  // ISO 14688-1 and Wentworth 1922 (both from memory).
  it.each([
    ['iso14688', 'sand', 'fine', 0.063, 0.2],
    ['iso14688', 'sand', 'medium', 0.2, 0.63],
    ['iso14688', 'sand', 'mediumToCoarse', 0.2, 2],
    ['iso14688', 'gravel', 'fine', 2, 6.3],
    ['iso14688', 'silt', 'coarse', 0.02, 0.063],
    ['wentworth', 'sand', 'medium', 0.25, 0.5],
    ['wentworth', 'sand', 'fine', 0.0625, 0.25],
    ['wentworth', 'gravel', 'coarse', 2, 64],
  ] as const)('by the words of %s: %s, %s', (grainScheme, material, grain, leastMm, mostMm) => {
    expect(grainOf(layer({ grainScheme, material, grain }), 30)).toEqual({
      leastMm,
      mostMm,
      bySieve: false,
    });
  });

  it('takes in both scales where none is named', () => {
    expect(grainOf(layer({ grain: 'fine' }), 30)).toMatchObject({ leastMm: 0.0625, mostMm: 0.25 });
  });

  it('may be finer than its words where finer ground is mixed in', () => {
    const silty = (degree: 'slightly' | 'plain') =>
      layer({ grain: 'fine', grainScheme: 'iso14688', qualifiers: [{ material: 'silt', degree }] });
    expect(grainOf(silty('plain'), 30)?.leastMm).toBe(0);
    expect(grainOf(silty('slightly'), 30)?.leastMm).toBe(0.063);
  });

  it('is told by a sieve before words, with how even it is', () => {
    const sieve = [
      { size: 0.1, finer: 10 },
      { size: 0.2, finer: 30 },
      { size: 0.4, finer: 60 },
    ];
    expect(grainOf(layer({ grain: 'coarse', sieve }), 30)).toEqual({
      leastMm: 0.2,
      mostMm: 0.2,
      bySieve: true,
      uniformity: 4,
    });
  });

  it('is unknown for rock, clay and grain that nobody described', () => {
    expect(grainOf(layer({}), 30)).toBeUndefined();
    expect(grainOf(layer({ material: 'clay', grain: 'fine' }), 30)).toBeUndefined();
    expect(grainOf(layer({ material: 'granite', grain: 'coarse' }), 30)).toBeUndefined();
  });
});

describe('a layer that is no finer than another by its words', () => {
  const medium = layer({ grain: 'medium' });

  it('has a grain word as coarse or coarser', () => {
    expect(isNoFiner(layer({ grain: 'mediumToCoarse' }), medium)).toBe(true);
    expect(isNoFiner(layer({ grain: 'fineToMedium' }), medium)).toBe(false);
    expect(isNoFiner(layer({ material: 'gravel', grain: 'fine' }), medium)).toBe(true);
  });

  it('has nothing finer mixed in by more than a little', () => {
    const mixed = (material: 'silt' | 'sand') =>
      layer({ material: 'gravel', grain: 'fine', qualifiers: [{ material, degree: 'very' }] });
    expect(isNoFiner(mixed('silt'), medium)).toBe(false);
    expect(isNoFiner(mixed('sand'), medium)).toBe(true);
  });

  it('is not told where a layer has no grain word', () => {
    expect(isNoFiner(layer({}), medium)).toBe(false);
    expect(isNoFiner(medium, layer({}))).toBe(false);
  });
});
