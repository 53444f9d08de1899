import { expect, test } from 'vitest';
import { bytesOf } from '../../../../core/exchange/encode.ts';
import { holdsGeoJson, readGeoJson } from '../../../../core/exchange/geojson/readGeoJson.ts';
import { geoJsonWriter } from '../../../../core/exchange/geojson/writeGeoJson.ts';
import { decode } from '../../../../core/exchange/tables/decode.ts';
import { writeWells } from '../../../../core/exchange/writer.ts';
import { demoWells, outgoing, writing } from '../roundTrip.ts';

const file = (json: unknown) => ({
  name: 'points.geojson',
  bytes: bytesOf([typeof json === 'string' ? json : JSON.stringify(json)]),
});

function read(json: unknown) {
  const result = readGeoJson(file(json));
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
}

const feature = (coordinates: unknown, properties: unknown = { number: 'A1' }) => ({
  type: 'Feature',
  geometry: { type: 'Point', coordinates },
  properties,
});

test('a position is longitude first', () => {
  const { wells } = read(feature([-1.234567, 8.123456, 312]));
  expect(wells[0]!.record.site).toEqual({ latitude: 8.123456, longitude: -1.234567 });
});

test.each([
  [[0, 0], 'sea'],
  [[200, 12], 'no latitude and longitude'],
  [[12, 120], 'swapped'],
])('a position %j is left out and told', (coordinates, word) => {
  const { wells, troubles } = read(feature(coordinates));
  expect(wells[0]!.record.site).toBeUndefined();
  expect(troubles).toMatchObject([{ column: 'geometry', kept: true }]);
  expect(troubles[0]!.sentence).toContain(word);
});

test('properties under headings that tables of wells have come in, in the unit of their name', () => {
  const properties = { id: 103, Community: 'Dala', well_depth_ft: '100', status: 'working' };
  const { wells, troubles } = read(feature([1, 2], properties));
  expect(wells[0]!.record).toMatchObject({
    identity: { number: '103' },
    site: { village: 'Dala' },
    bore: { depthReached: 30.48 },
  });
  expect(troubles).toMatchObject([{ column: 'status', kept: true }]);
});

test('an own name of the writer wins over a heading that is like it', () => {
  const { wells, troubles } = read(feature([1, 2], { well: 'B', number: 'A1', depth: 'deep' }));
  expect(wells[0]!.record.identity!.number).toBe('A1');
  expect(troubles.map(({ column }) => column)).toEqual(['well', 'depth']);
});

test('a shape that is no point gives a well without a position', () => {
  const line = { type: 'LineString', coordinates: [[1, 2]] };
  const { wells, troubles } = read({ ...feature([]), geometry: line });
  expect(wells).toHaveLength(1);
  expect(troubles[0]!.sentence).toContain('LineString');
});

test('properties are matched by their names, and others are told once by their line', () => {
  const properties = { NUMBER: 'A1', 'site.village': 'Dala', depth_drilled_m: '32.5', mood: 'x' };
  const features = [feature([1, 2]), feature([1, 2], properties), feature([1, 2], properties)];
  const lines = features.map((one) => JSON.stringify(one)).join(',\n');
  const { wells, troubles } = read(`{"type":"FeatureCollection","features":[\n${lines}\n]}`);
  expect(wells.map(({ line }) => line)).toEqual([2, 3, 4]);
  expect(wells[1]!.record).toMatchObject({
    identity: { number: 'A1' },
    site: { village: 'Dala' },
    bore: { depthReached: 32.5 },
  });
  expect(troubles).toMatchObject([{ line: 3, column: 'mood', kept: true }]);
});

test('what a field cannot hold is told by its path', () => {
  const { wells, troubles } = read(feature([1, 2], { number: 'A1', state: 'working' }));
  expect(wells[0]!.record.identity).toEqual({ number: 'A1' });
  expect(troubles).toMatchObject([{ column: 'identity.state', kept: true }]);
});

test('the id of a feature is its number where it has no other', () => {
  expect(read({ ...feature([1, 2], null), id: 17 }).wells[0]!.record.identity?.number).toBe('17');
});

test('a file that is cut short or on another grid is refused', () => {
  expect(readGeoJson(file('{"type":"FeatureCollection","features":['))).toMatchObject({
    error: { code: 'geoJsonBroken' },
  });
  const crs = (name: string) => ({ type: 'name', properties: { name } });
  const collection = (name: string) => ({
    type: 'FeatureCollection',
    crs: crs(name),
    features: [],
  });
  expect(readGeoJson(file(collection('urn:ogc:def:crs:EPSG::32630')))).toMatchObject({
    error: { code: 'geoJsonGrid' },
  });
  expect(read(collection('urn:ogc:def:crs:OGC:1.3:CRS84')).wells).toEqual([]);
});

test('a file is known by the type at its top', () => {
  expect(holdsGeoJson(file(feature([1, 2])))).toBe(true);
  expect(holdsGeoJson(file({ schemaVersion: 1 }))).toBe(false);
});

// RFC 7946: sections 3 (one object), 3.1.1 (positions), 3.2 (features), 4 (no crs).
test('the written file keeps to RFC 7946', async () => {
  const wells = [...demoWells().values(), { schemaVersion: 1 as const }].map(outgoing);
  const { files } = await writeWells(geoJsonWriter(writing), wells);
  const json = JSON.parse(decode(files[0]!.bytes).text) as {
    features: { type: string; geometry: { coordinates: number[] } | null; properties: object }[];
  };
  expect(Object.keys(json)).toEqual(['type', 'features']);
  expect(json.features).toHaveLength(wells.length);
  expect(json.features.at(-1)!.geometry).toBeNull();
  for (const { type, geometry, properties } of json.features) {
    expect([type, typeof properties]).toEqual(['Feature', 'object']);
    if (geometry) expect(Math.abs(geometry.coordinates[1]!)).toBeLessThanOrEqual(90);
  }
});

test('no wells are a collection without features', async () => {
  const { files } = await writeWells(geoJsonWriter(writing), []);
  const text = decode(files[0]!.bytes).text;
  expect(JSON.parse(text)).toEqual({ type: 'FeatureCollection', features: [] });
});
