import { geoDistance } from 'd3';
import { describe, expect, it } from 'vitest';
import { planeAt } from '../../../core/base/geo/localPlane.ts';
import {
  graticuleOf,
  scaleBarOf,
  toPosition,
  toScreen,
  type Sight,
} from '../../../renderer/archive/mapScene.ts';

/** A map of 600 by 400 pixels, 10 pixels a kilometre, about a centre. */
const sightAt = (latitude: number, longitude: number, parts: Partial<Sight> = {}): Sight => ({
  plane: planeAt({ latitude, longitude }),
  k: 0.01,
  x: 300,
  y: 200,
  width: 600,
  height: 400,
  ...parts,
});

describe('a map as it is seen', () => {
  it('has north up and east to the right, and leads back', () => {
    const sight = sightAt(1.4, -6.5);
    const at = toScreen(sight, { latitude: 1.5, longitude: -6.4 });
    expect(at.x).toBeGreaterThan(300);
    expect(at.y).toBeLessThan(200);
    const back = toPosition(sight, at);
    expect(back.latitude).toBeCloseTo(1.5, 9);
    expect(back.longitude).toBeCloseTo(-6.4, 9);
  });

  it('has its graticule where positions are drawn, in one step both ways', () => {
    const sight = sightAt(1.4, -6.5);
    const { meridians, parallels } = graticuleOf(sight);
    expect(meridians.map(({ angle, half }) => `${angle} ${half}`)).toEqual([
      '6°40′ west',
      '6°30′ west',
      '6°20′ west',
    ]);
    expect(parallels.map(({ angle, half }) => `${angle} ${half}`)).toEqual([
      '1°20′ north',
      '1°30′ north',
    ]);
    const { x } = toScreen(sight, { latitude: 1.4, longitude: -6 - 2 / 3 });
    const { y } = toScreen(sight, { latitude: 4 / 3, longitude: -6.5 });
    expect(meridians[0]?.at).toBeCloseTo(x, 6);
    expect(parallels[0]?.at).toBeCloseTo(y, 6);
  });

  it('names the halves of the globe across the equator, Greenwich and the date line', () => {
    const named = (sight: Sight) => {
      const { meridians, parallels } = graticuleOf(sight);
      return [...meridians, ...parallels].map(({ angle, half }) => `${angle} ${half ?? '-'}`);
    };
    const wide = { k: 0.002 };
    expect(named(sightAt(0, 0, wide))).toEqual([
      '1°00′ west',
      '0°30′ west',
      '0°00′ -',
      '0°30′ east',
      '1°00′ east',
      '0°30′ south',
      '0°00′ -',
      '0°30′ north',
    ]);
    expect(named(sightAt(-17, 180, wide))).toEqual(
      expect.arrayContaining(['180° -', '179° west', '179° east', '17° south']),
    );
  });

  // d3-geo’s geoDistance is on a sphere of the mean radius; WGS 84 differs by up to 0.6 %.
  it.each([0, 12, -33, 55])('has a scale bar that is true at its middle, at %i°', (latitude) => {
    const off = { y: 200 + 60_000 * 0.01 };
    for (const sight of [sightAt(latitude, 20), sightAt(latitude, 20, off)]) {
      const { metres, pixels } = scaleBarOf(sight);
      const left = toPosition(sight, { x: 300 - pixels / 2, y: 200 });
      const right = toPosition(sight, { x: 300 + pixels / 2, y: 200 });
      const angle = geoDistance([left.longitude, left.latitude], [right.longitude, right.latitude]);
      expect(Math.abs((angle * 6_371_008.8) / metres - 1)).toBeLessThan(0.007);
      expect(pixels).toBeLessThanOrEqual(130);
    }
  });
});
