import { expect, it } from 'vitest';
import { degreeOfLatitudeM, equatorialRadiusM } from '../../../../core/base/geo/ellipsoid.ts';
import { geodesicM } from '../../../../core/base/geo/geodesic.ts';

const dms = (degrees: number, minutes: number, seconds: number) =>
  degrees + minutes / 60 + seconds / 3600;

it('agrees with the line from Flinders Peak to Buninyong', () => {
  // Source: Geocentric Datum of Australia, technical manual, worked example on GRS 80, whose
  // flattening differs from WGS 84's in the tenth figure (from memory).
  const flindersPeak = {
    latitude: -dms(37, 57, 3.7203),
    longitude: dms(144, 25, 29.5244),
  };
  const buninyong = {
    latitude: -dms(37, 39, 10.1561),
    longitude: dms(143, 55, 35.3839),
  };
  expect(geodesicM(flindersPeak, buninyong)).toBeCloseTo(54972.271, 3);
});

it('agrees with a line over an ocean', () => {
  // Source: GeographicLib, GeodSolve(1), example from 40.6 N 73.8 W to 51.6 N 0.5 W (from memory).
  const from = { latitude: 40.6, longitude: -73.8 };
  const to = { latitude: 51.6, longitude: -0.5 };
  expect(geodesicM(from, to)).toBeCloseTo(5551759.4, 1);
});

it('is nothing from a place to itself, and the same both ways', () => {
  const one = { latitude: 7.1, longitude: 12.3 };
  const other = { latitude: 7.4, longitude: 12.1 };
  expect(geodesicM(one, one)).toBe(0);
  expect(geodesicM(one, other)).toBeCloseTo(geodesicM(other, one)!, 6);
});

it('follows the equator and the meridian', () => {
  const atEquator = geodesicM({ latitude: 0, longitude: 10 }, { latitude: 0, longitude: 11 })!;
  expect(atEquator).toBeCloseTo((equatorialRadiusM * Math.PI) / 180, 4);
  const alongMeridian = geodesicM(
    { latitude: 44.995, longitude: 5 },
    { latitude: 45.005, longitude: 5 },
  )!;
  expect(alongMeridian).toBeCloseTo(degreeOfLatitudeM(45) / 100, 4);
});

it('goes the short way over the date line', () => {
  const way = geodesicM({ latitude: 2, longitude: 179.9 }, { latitude: 2, longitude: -179.9 })!;
  expect(way).toBeGreaterThan(22_000);
  expect(way).toBeLessThan(22_300);
});

it('does not settle for places nearly opposite', () => {
  expect(geodesicM({ latitude: 0, longitude: 0 }, { latitude: 0.5, longitude: 179.7 })).toBe(
    undefined,
  );
});
