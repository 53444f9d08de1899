import type { Metres } from '../units.ts';

/** WGS 84: equatorial radius and flattening. Source: NGA.STND.0036_1.0.0_WGS84, table 3.1. */
export const equatorialRadiusM = 6_378_137;
export const flattening = 1 / 298.257223563;
const eccentricitySquared = flattening * (2 - flattening);

/** Degrees, WGS 84; north and east are positive. */
export interface Position {
  readonly latitude: number;
  readonly longitude: number;
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/**
 * Length of a degree of latitude at a latitude, from the meridian's radius of curvature.
 * Source: Snyder 1987, Map Projections, USGS Professional Paper 1395, equation 4-19.
 */
export function degreeOfLatitudeM(latitude: number): Metres {
  const squash = 1 - eccentricitySquared * Math.sin(radians(latitude)) ** 2;
  return radians((equatorialRadiusM * (1 - eccentricitySquared)) / squash ** 1.5);
}

/**
 * Length of a degree of longitude along a parallel. Source: as above, equation 4-21.
 */
export function degreeOfLongitudeM(latitude: number): Metres {
  const squash = 1 - eccentricitySquared * Math.sin(radians(latitude)) ** 2;
  return radians((equatorialRadiusM * Math.cos(radians(latitude))) / Math.sqrt(squash));
}
