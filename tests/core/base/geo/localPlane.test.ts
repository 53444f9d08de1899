import { geoDistance } from 'd3';
import { describe, expect, it } from 'vitest';
import { planeAt, stretchAt } from '../../../../core/base/geo/localPlane.ts';
import type { Position } from '../../../../core/base/geo/ellipsoid.ts';

const at = (latitude: number, longitude: number): Position => ({ latitude, longitude });

/** Mean radius of the Earth, metres: IUGG (Moritz 2000, Geodetic Reference System 1980). */
const meanRadiusM = 6_371_008.8;

const onSphereM = (a: Position, b: Position) =>
  meanRadiusM * geoDistance([a.longitude, a.latitude], [b.longitude, b.latitude]);

describe('a local map', () => {
  it('has its centre at nought, east to the right and north up', () => {
    const plane = planeAt(at(10, 20));
    expect(plane.toPlane(at(10, 20))).toEqual({ eastM: 0, northM: 0 });
    expect(plane.toPlane(at(10, 20.1)).eastM).toBeGreaterThan(10_000);
    expect(plane.toPlane(at(10.1, 20)).northM).toBeGreaterThan(10_000);
    expect(plane.toPlane(at(9.9, 19.9)).northM).toBeLessThan(0);
  });

  // d3-geo’s geoDistance is on a sphere; the spheroid differs from it by up to 0.6 %.
  it.each([
    [at(1.4, -6.5), at(1.45, -6.42)],
    [at(-33, 151), at(-33.1, 151.1)],
    [at(60, 10), at(60.05, 10.2)],
  ])('gives distances near its centre as great circles have them', (centre, other) => {
    const { eastM, northM } = planeAt(centre).toPlane(other);
    const ratio = Math.hypot(eastM, northM) / onSphereM(centre, other);
    expect(Math.abs(ratio - 1)).toBeLessThan(0.007);
  });

  it('leads back to the position that was put in, across the date line too', () => {
    const plane = planeAt(at(-17, 179.8));
    const back = plane.toPosition(plane.toPlane(at(-16.5, -179.9)));
    expect(back.latitude).toBeCloseTo(-16.5, 9);
    expect(back.longitude).toBeCloseTo(-179.9, 9);
    expect(plane.toPlane(at(-17, -179.9)).eastM).toBeLessThan(40_000);
  });

  it('draws east–west lines too long towards the pole and too short towards the equator', () => {
    const plane = planeAt(at(10, 0));
    expect(stretchAt(plane, 10)).toBe(1);
    expect(stretchAt(plane, 11)).toBeCloseTo(1.0032, 3);
    expect(stretchAt(plane, 9)).toBeLessThan(1);
  });
});
