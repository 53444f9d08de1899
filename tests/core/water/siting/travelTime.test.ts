import { describe, expect, it } from 'vitest';
import { groundClasses, groundFigures } from '../../../../core/water/siting/groundClasses.ts';
import {
  againstReferences,
  assumedIn,
  travelDays,
} from '../../../../core/water/siting/travelTime.ts';

const path = 'site.surroundings[0].distance';
const one = (value: number) => ({ least: value, most: value });

describe('time on the way', () => {
  it('is distance by porosity over conductivity and gradient: 50 m at 10 m/d, 1 in 100, 20 % (Darcy)', () => {
    const days = travelDays(50, path, undefined, {
      conductivityMd: one(10),
      gradient: one(0.01),
      porosity: one(0.2),
    })!;
    expect(days.value.least).toBeCloseTo(100, 9);
    expect(days.value.most).toBeCloseTo(100, 9);
    expect(assumedIn(days)).toEqual(['evenGround', 'straightWay', 'noWayDown', 'noPumping']);
  });

  it('goes from the fastest to the slowest that a table allows', () => {
    const days = travelDays(30, path, 'mediumSand')!;
    // Bouwer 1978: 5 to 20 m/d; Johnson 1967: 15 to 32 %; gradient 1 to 10 in 1000.
    expect(days.value.least).toBeCloseTo((30 * 0.15) / (20 * 0.01), 9);
    expect(days.value.most).toBeCloseTo((30 * 0.32) / (5 * 0.001), 9);
    expect(assumedIn(days)).toEqual(
      expect.arrayContaining(['conductivityByGround', 'porosityByGround', 'gradient']),
    );
  });

  it('is not told where the ground is not, or where nothing would flow', () => {
    expect(travelDays(30, path, undefined)).toBeUndefined();
    expect(travelDays(30, path, undefined, { conductivityMd: one(10) })).toBeUndefined();
    expect(travelDays(30, path, 'gravel', { gradient: one(0) })).toBeUndefined();
  });

  it('is nothing where the well stands in it', () => {
    expect(travelDays(0, path, 'gravel')!.value).toEqual({ least: 0, most: 0 });
  });
});

describe('beside the days that are named as limits', () => {
  const stands = (leastDays: number, mostDays: number) => {
    const days = travelDays(1, path, undefined, {
      conductivityMd: one(1),
      gradient: one(1),
      porosity: { least: leastDays, most: mostDays },
    })!;
    return againstReferences(days).map(({ days: limit, stands: how }) => [limit, how]);
  };

  it('it is shorter, longer, or on both sides', () => {
    expect(stands(1, 20)).toEqual([
      [25, 'shorter'],
      [50, 'shorter'],
    ]);
    expect(stands(10, 40)).toEqual([
      [25, 'spans'],
      [50, 'shorter'],
    ]);
    expect(stands(50, 900)).toEqual([
      [25, 'longer'],
      [50, 'longer'],
    ]);
  });
});

it('every class of ground has figures from little to much', () => {
  for (const ground of groundClasses)
    for (const { least, most } of Object.values(groundFigures[ground])) {
      expect(least).toBeGreaterThan(0);
      expect(most).toBeGreaterThanOrEqual(least);
    }
});

it('the classes hold what Bouwer 1978 and Johnson 1967 print', () => {
  expect(groundFigures.fineSand).toEqual({
    conductivityMd: { least: 1, most: 5 },
    porosity: { least: 0.1, most: 0.28 },
  });
  expect(groundFigures.coarseSand).toEqual({
    conductivityMd: { least: 20, most: 100 },
    porosity: { least: 0.2, most: 0.35 },
  });
  expect(groundFigures.gravel).toEqual({
    conductivityMd: { least: 100, most: 1000 },
    porosity: { least: 0.12, most: 0.35 },
  });
});
