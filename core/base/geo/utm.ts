import type { Metres } from '../units.ts';
import { equatorialRadiusM, flattening, type Position } from './ellipsoid.ts';

/** A place on the grid of the Universal Transverse Mercator, WGS 84. */
export interface GridPlace {
  /** 1 to 60. */
  readonly zone: number;
  readonly half: 'N' | 'S';
  readonly eastingM: Metres;
  readonly northingM: Metres;
}

/** The grid reaches from 80° south to 84° north. */
const reach = { south: -80, north: 84 } as const;
const scaleOnMeridian = 0.9996;
const falseEastingM = 500_000;
const falseNorthingM = 10_000_000;

const n = flattening / (2 - flattening);
/** Radius of the circle as long as a meridian. */
const rectifyingRadiusM = (equatorialRadiusM / (1 + n)) * (1 + n ** 2 / 4 + n ** 4 / 64);
/** Krüger's series to the third order of n: better than a millimetre within a zone. */
const series = [
  n / 2 - (2 / 3) * n ** 2 + (5 / 16) * n ** 3,
  (13 / 48) * n ** 2 - (3 / 5) * n ** 3,
  (61 / 240) * n ** 3,
] as const;

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Six degrees each from 180° west; the wider zones off Norway are not followed. */
function zoneOf(longitude: number): number {
  return (Math.floor((longitude + 180) / 6) % 60) + 1;
}

/**
 * Where a place lies on the grid; undefined outside of its reach. Source: Krüger 1912, Konforme
 * Abbildung des Erdellipsoids in der Ebene (from memory).
 */
export function gridPlace({ latitude, longitude }: Position): GridPlace | undefined {
  if (latitude < reach.south || latitude > reach.north) return undefined;
  const zone = zoneOf(longitude);
  const east = radians(longitude - (zone * 6 - 183));
  const e = (2 * Math.sqrt(n)) / (1 + n);
  const sine = Math.sin(radians(latitude));
  const t = Math.sinh(Math.atanh(sine) - e * Math.atanh(e * sine));
  const xi = Math.atan2(t, Math.cos(east));
  const eta = Math.asinh(Math.sin(east) / Math.hypot(t, Math.cos(east)));
  const sum = (term: (double: number) => number) =>
    series.reduce((total, weight, at) => total + weight * term(2 * (at + 1)), 0);
  const across = eta + sum((double) => Math.cos(double * xi) * Math.sinh(double * eta));
  const along = xi + sum((double) => Math.sin(double * xi) * Math.cosh(double * eta));
  const south = latitude < 0;
  const scaleM = scaleOnMeridian * rectifyingRadiusM;
  return {
    zone,
    half: south ? 'S' : 'N',
    eastingM: falseEastingM + scaleM * across,
    northingM: (south ? falseNorthingM : 0) + scaleM * along,
  };
}
