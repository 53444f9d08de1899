import { valueAt } from '../../base/recordPath.ts';
import type { WellRecord } from '../../record/schema.ts';
import { losingOf, type Carried, type Losing } from '../losses.ts';
import type { OutgoingWell } from '../outgoing.ts';
import { flatFields } from '../points/flatFields.ts';
import { readPosition } from '../points/position.ts';
import { sayReason } from '../reasons/sayReason.ts';
import type { WellWriter, Writing } from '../writer.ts';

/** What a point with flat properties holds of a record. */
export const carriedByGeoJson: Carried = new Set([
  'schemaVersion',
  'site.latitude',
  'site.longitude',
  ...flatFields.map(({ path }) => path),
]);

/** RFC 7946, section 11.2: more places are seldom warranted; seven are about a centimetre. */
const places = 7;

/** Longitude first (RFC 7946, section 3.1.1); no position is a geometry of null (section 3.2). */
function geometryOf({ site }: WellRecord, { lose }: Losing) {
  const { latitude, longitude } = site ?? {};
  if (latitude === undefined || longitude === undefined) {
    const why = 'A point needs latitude and longitude.';
    if (latitude !== undefined) lose('site.latitude', why);
    if (longitude !== undefined) lose('site.longitude', why);
    return null;
  }
  const [x, y] = [Number(longitude.toFixed(places)), Number(latitude.toFixed(places))];
  const position = readPosition(y, x);
  if ('says' in position) {
    const why = sayReason(position.says, 'en');
    lose('site.latitude', why);
    lose('site.longitude', why);
    return null;
  }
  const rounded = `It is rounded to ${places} decimals.`;
  if (x !== longitude) lose('site.longitude', rounded);
  if (y !== latitude) lose('site.latitude', rounded);
  return { type: 'Point', coordinates: [x, y] };
}

function featureOf({ record, revision, changedAt }: OutgoingWell, losing: Losing) {
  const values = flatFields.flatMap(({ name, path }) => {
    const value = valueAt(record, path);
    return value === undefined ? [] : [[name, value] as const];
  });
  const { id } = record.identity ?? {};
  return {
    type: 'Feature',
    ...(id === undefined ? {} : { id }),
    geometry: geometryOf(record, losing),
    properties: { ...Object.fromEntries(values), revision, changed_at: changedAt },
  };
}

/** Writes wells as points of one GeoJSON file (RFC 7946), one feature on each line. */
export function geoJsonWriter({ name }: Writing): WellWriter {
  let opening = '';
  return {
    well(one) {
      const losing = losingOf(one.record, carriedByGeoJson, 'A point of GeoJSON');
      const content = `${opening}\n${JSON.stringify(featureOf(one, losing))}`;
      opening = ',';
      return { added: [{ part: 'features', content }], losses: losing.losses };
    },
    end: () => ({
      added: [
        { part: 'head', content: '{"type":"FeatureCollection","features":[' },
        { part: 'foot', content: '\n]}\n' },
      ],
      files: [{ name: `${name}.geojson`, parts: ['head', 'features', 'foot'] }],
    }),
  };
}
