import { describe, expect, it } from 'vitest';
import { centreOf, extentOf, turned } from '../../../../core/base/geo/extent.ts';

const at = (latitude: number, longitude: number) => ({ latitude, longitude });

describe('the extent of positions', () => {
  it('holds all of them and no more', () => {
    const extent = extentOf([at(1.2, -6.8), at(1.7, -6.2), at(1.4, -6.5)]);
    expect(extent).toEqual({ west: -6.8, east: -6.2, south: 1.2, north: 1.7 });
  });

  it('goes across the date line by the short way', () => {
    const extent = extentOf([at(-17, 179.5), at(-16, -179.5), at(-18, 178)])!;
    expect([extent.west, extent.east]).toEqual([178, 180.5]);
    expect(centreOf(extent)).toEqual(at(-17, 179.25));
  });

  it('of one position is that position', () => {
    const extent = extentOf([at(-4, 30)])!;
    expect(extent).toEqual({ west: 30, east: 30, south: -4, north: -4 });
    expect(centreOf(extent)).toEqual(at(-4, 30));
  });

  it('of none is not known', () => {
    expect(extentOf([])).toBeUndefined();
  });
});

describe('an angle', () => {
  it.each([
    [190, -180, -170],
    [-181, -180, 179],
    [180, -180, -180],
    [-6, 0, 354],
    [725, -180, 5],
  ])('of %f° is, in the turn from %f°, %f°', (degrees, from, same) => {
    expect(turned(degrees, from)).toBe(same);
  });
});
