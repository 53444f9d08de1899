import { describe, expect, it } from 'vitest';
import { sitingPlan } from '../../../../core/water/siting/sitingPlan.ts';

describe('a plan of what stands round the well', () => {
  it.each([
    [0, 0, 20],
    [90, 20, 0],
    [180, 0, -20],
    [270, -20, 0],
    [45, Math.SQRT2 * 10, Math.SQRT2 * 10],
    [360, 0, 20],
  ])('at %d° clockwise from north lies %d m east and %d m north', (direction, eastM, northM) => {
    const [placed] = sitingPlan({
      surroundings: [{ kind: 'latrine', distance: 20, direction }],
    }).placed;
    expect(placed!.eastM).toBeCloseTo(eastM, 9);
    expect(placed!.northM).toBeCloseTo(northM, 9);
  });

  it('lists apart what has no direction or no distance', () => {
    const plan = sitingPlan({
      surroundings: [
        { kind: 'latrine', distance: 35, direction: 120, slope: 'uphill' },
        { kind: 'livestock', distance: 50 },
        { kind: 'graveyard', direction: 10 },
        { kind: 'wasteDump' },
        { kind: 'building', distance: 0 },
      ],
    });
    expect(plan.placed.map(({ path }) => path)).toEqual([
      'site.surroundings[0]',
      'site.surroundings[4]',
    ]);
    expect(plan.placed[0]).toMatchObject({ slope: 'uphill', distanceM: 35 });
    expect(plan.withoutDirection).toEqual([
      { path: 'site.surroundings[1]', kind: 'livestock', distanceM: 50 },
    ]);
    expect(plan.withoutDistance.map(({ kind }) => kind)).toEqual(['graveyard', 'wasteDump']);
    expect(plan.reachM).toBe(35);
  });

  it('is empty of an unknown site', () => {
    expect(sitingPlan(undefined)).toEqual({
      placed: [],
      withoutDirection: [],
      withoutDistance: [],
    });
  });
});
