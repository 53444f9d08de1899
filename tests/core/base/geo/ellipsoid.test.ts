import { describe, expect, it } from 'vitest';
import { degreeOfLatitudeM, degreeOfLongitudeM } from '../../../../core/base/geo/ellipsoid.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const latitudes = [0, 6.5, 15, 30, 45, 60, 75, -12, -33];

describe('the length of a degree on WGS 84', () => {
  // Published series for the WGS 84 spheroid, metres, cut after a few terms (as in the
  // encyclopaedic article “Geographic coordinate system”, section “Length of a degree”).
  it.each(latitudes)('of latitude, at %f°, is that of the published series', (latitude) => {
    const phi = radians(latitude);
    const series =
      111132.92 -
      559.82 * Math.cos(2 * phi) +
      1.175 * Math.cos(4 * phi) -
      0.0023 * Math.cos(6 * phi);
    expect(Math.abs(degreeOfLatitudeM(latitude) - series)).toBeLessThan(0.1);
  });

  it.each(latitudes)('of longitude, at %f°, is that of the published series', (latitude) => {
    const phi = radians(latitude);
    const series = 111412.84 * Math.cos(phi) - 93.5 * Math.cos(3 * phi) + 0.118 * Math.cos(5 * phi);
    expect(Math.abs(degreeOfLongitudeM(latitude) - series)).toBeLessThan(0.1);
  });

  // The same article: at the equator a second of latitude is 30.715 m and a degree of longitude
  // 111.3 km. A published diagram of these lengths: at 48° a degree of longitude is 74.63 km and
  // one of latitude 111.2 km.
  it('gives the figures that are published', () => {
    expect(degreeOfLatitudeM(0) / 3600).toBeCloseTo(30.715, 3);
    expect(degreeOfLongitudeM(0) / 1000).toBeCloseTo(111.3, 1);
    expect(degreeOfLongitudeM(48) / 1000).toBeCloseTo(74.63, 2);
    expect(degreeOfLatitudeM(48) / 1000).toBeCloseTo(111.2, 1);
  });

  it('is nothing for longitude at a pole', () => {
    expect(degreeOfLongitudeM(90)).toBeCloseTo(0, 6);
  });
});
