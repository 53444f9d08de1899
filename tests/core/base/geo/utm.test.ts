import { describe, expect, it } from 'vitest';
import { gridPlace } from '../../../../core/base/geo/utm.ts';

/**
 * Whole metres of the first eight as published in the tests of a general conversion library
 * (github.com/Turbo87/utm); decimals, and the others, computed with a general projection library.
 */
const points = [
  [51.2, 7.5, 32, 'N', 395201.31, 5673135.241],
  [50.77535, 6.08389, 32, 'N', 294408.917, 5628897.997],
  [40.71435, -74.00597, 18, 'N', 583959.959, 4507523.087],
  [-41.28646, 174.77624, 60, 'S', 313784.306, 5427057.322],
  [-33.92487, 18.42406, 34, 'S', 261877.816, 6243185.589],
  [-32.89018, -68.84405, 19, 'S', 514586.228, 6360876.825],
  [64.83778, -147.71639, 6, 'N', 466013.272, 7190567.999],
  [56.7968, -5.00601, 30, 'N', 377485.766, 6296561.854],
  [0, 3, 31, 'N', 500000, 0],
  [0, 0, 31, 'N', 166021.443, 0],
  [1, 3, 31, 'N', 500000, 110530.159],
  [9.0765, 7.3986, 32, 'N', 323998.954, 1003697.905],
  [12.3714, -1.5197, 30, 'N', 660936.511, 1368068.361],
  [6.3004, -10.7969, 29, 'N', 301217.649, 696753.779],
] as const;

describe('a place on the UTM grid', () => {
  it.each(points)('of %f, %f is that of the check point', (lat, lon, zone, half, east, north) => {
    const place = gridPlace({ latitude: lat, longitude: lon })!;
    expect([place.zone, place.half]).toEqual([zone, half]);
    expect(Math.abs(place.eastingM - east)).toBeLessThan(0.01);
    expect(Math.abs(place.northingM - north)).toBeLessThan(0.01);
  });

  it('is none beyond the grid', () => {
    expect(gridPlace({ latitude: 85, longitude: 0 })).toBeUndefined();
    expect(gridPlace({ latitude: -80.5, longitude: 0 })).toBeUndefined();
  });

  it('of the last meridian is in the first zone', () => {
    expect(gridPlace({ latitude: 0, longitude: 180 })!.zone).toBe(1);
  });
});
