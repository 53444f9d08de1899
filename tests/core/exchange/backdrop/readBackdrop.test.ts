import { describe, expect, it } from 'vitest';
import { mostLetters, readBackdrop } from '../../../../core/exchange/backdrop/readBackdrop.ts';
import { valueOf } from '../../../electron/archive/sample.ts';

const ring = [
  [-6.9, 1.1],
  [-6.1, 1.1],
  [-6.1, 1.8],
  [-6.9, 1.1],
];
const polygon = { type: 'Polygon', coordinates: [ring] };
const feature = (geometry: unknown, properties: unknown = null) => ({
  type: 'Feature',
  geometry,
  properties,
});
const collection = (...features: unknown[]) => ({ type: 'FeatureCollection', features });

const read = (file: unknown) => readBackdrop(JSON.stringify(file));
const shapes = (file: unknown) => valueOf(read(file)).shapes;

function refusal(file: unknown): string {
  const answer = typeof file === 'string' ? readBackdrop(file) : read(file);
  if (answer.ok) throw new Error('it was taken');
  return `${answer.error.code} ${answer.error.sentence}`;
}

describe('a backdrop', () => {
  it('is read from a collection, a feature or a bare geometry', () => {
    const bare = [{ closed: true, lines: [ring] }];
    expect(shapes(collection(feature(polygon)))).toEqual(bare);
    expect(shapes(feature(polygon))).toEqual(bare);
    expect(shapes(polygon)).toEqual(bare);
    expect(readBackdrop(`\uFEFF${JSON.stringify(polygon)}`).ok).toBe(true);
  });

  it('keeps outlines with their holes, lines, and parts of many', () => {
    const line = [
      [-6.5, 1.2],
      [-6.4, 1.3],
    ];
    const geometries = [
      { type: 'LineString', coordinates: line },
      { type: 'MultiLineString', coordinates: [line, ring] },
      { type: 'Polygon', coordinates: [ring, ring] },
      { type: 'MultiPolygon', coordinates: [[ring, ring], [ring]] },
    ];
    expect(shapes({ type: 'GeometryCollection', geometries })).toEqual([
      { closed: false, lines: [line] },
      { closed: false, lines: [line, ring] },
      { closed: true, lines: [ring, ring] },
      { closed: true, lines: [ring, ring, ring] },
    ]);
  });

  it.each([
    [{ name: 'Kelumvara', id: 3 }, 'Kelumvara'],
    [{ code: 'K1', NAME: ' Kelumvara ' }, 'Kelumvara'],
    [{ nom: 'Kelumvara', name_short: 'K' }, 'Kelumvara'],
    [{ adm2_name: 'Kelumvara' }, 'Kelumvara'],
    [{ name: '', code: 'K1' }, undefined],
    [{ name: 7 }, undefined],
    [null, undefined],
  ])('takes its name from the properties %j', (properties, name) => {
    expect(shapes(feature(polygon, properties))[0]?.name).toBe(name);
  });

  it('has positions to the decimetre, without heights and without repeats', () => {
    const coordinates = [
      [-6.123456789, 1.1, 320],
      [-6.1234567, 1.10000001, 321],
      [-6.2, 1.2],
    ];
    expect(shapes({ type: 'LineString', coordinates })[0]?.lines).toEqual([
      [
        [-6.123457, 1.1],
        [-6.2, 1.2],
      ],
    ]);
  });

  it('leaves points out and counts them, and features without a place', () => {
    const points = { type: 'MultiPoint', coordinates: ring };
    const file = collection(
      feature(polygon),
      feature({ type: 'Point', coordinates: [1, 2] }),
      feature(points),
      feature(null),
    );
    expect(valueOf(read(file))).toMatchObject({ pointsLeftOut: 5, shapes: [{ closed: true }] });
  });
});

describe('a file that is no backdrop', () => {
  it('is told by line and column where it is not JSON', () => {
    expect(refusal('{\n  "type": "Feature",\n  oops\n}')).toMatch(/^notJson Line 3, column 3: /);
    expect(refusal('')).toMatch(/^notJson Line 1, column 1: /);
  });

  it('is told where it is not GeoJSON', () => {
    expect(refusal([1])).toMatch(/^notGeoJson The file: no GeoJSON stands there/);
    expect(refusal({ type: 'Topology' })).toMatch(/^notGeoJson type: "Topology" is no kind/);
    expect(refusal({ wells: 3 })).toMatch(/^notGeoJson type: null is no kind/);
    expect(refusal({ type: 'FeatureCollection' })).toMatch(/^notGeoJson features: a list/);
    expect(refusal(collection(feature(polygon), 4))).toMatch(/features\[1\]: no GeoJSON/);
    expect(refusal(feature({ type: 'Polygon', coordinates: 3 }))).toMatch(
      /^notGeoJson geometry\.coordinates: a list was expected/,
    );
  });

  it('is told the first place that is not in degrees', () => {
    const metres = {
      type: 'LineString',
      coordinates: [
        [-6, 1],
        [456789.1, 155000],
      ],
    };
    expect(refusal(collection(feature(polygon), feature(metres)))).toBe(
      'notDegrees features[1].geometry.coordinates[1]: [456789.1,155000] is not a longitude and a latitude in degrees. Export the file again in WGS 84 (EPSG:4326).',
    );
    expect(refusal({ type: 'LineString', coordinates: [['a', 1]] })).toContain('["a",1]');
    expect(refusal({ type: 'LineString', coordinates: [[]] })).toContain('[null,null]');
  });

  it('is told when it says itself that it is in another system', () => {
    const crs = (name: string) => ({ ...polygon, crs: { type: 'name', properties: { name } } });
    expect(refusal(crs('urn:ogc:def:crs:EPSG::32629'))).toMatch(/^notDegrees crs: /);
    for (const own of ['urn:ogc:def:crs:OGC:1.3:CRS84', 'EPSG:4326', 'urn:ogc:def:crs:EPSG::4326'])
      expect(read(crs(own)).ok).toBe(true);
  });

  it('is told when there is nothing in it to draw', () => {
    expect(refusal(collection())).toMatch(/^nothingToDraw /);
    const still = [
      [-6, 1],
      [-6, 1],
    ];
    expect(refusal({ type: 'LineString', coordinates: still })).toMatch(/^nothingToDraw /);
  });

  it('is told how large it may be', () => {
    expect(refusal(' '.repeat(mostLetters + 1))).toMatch(/^tooLarge .* 5 million letters/);
  });
});
