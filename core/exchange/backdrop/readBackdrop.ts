import type { LonLat, MapShape } from '../../base/geo/shapes.ts';
import { ok, refused, type Result } from '../../base/result.ts';
import { isObject, lineAt, listAt, Unfit, type JsonObject } from './geoJson.ts';

/** Most letters of a file: a call carries 8 MB, and its quotes take two letters each. */
export const mostLetters = 5_000_000;

/** What a file gives a map to lie under its wells. */
export interface ReadBackdrop {
  readonly shapes: readonly MapShape[];
  /** Points are no backdrop and were left out. */
  readonly pointsLeftOut: number;
}

interface Gathering {
  readonly shapes: MapShape[];
  points: number;
}

type Lines = readonly (readonly LonLat[])[];

function lines(value: unknown, place: string): Lines {
  return listAt(value, place).flatMap((one, at) => {
    const line = lineAt(one, `${place}[${at}]`);
    return line ? [line] : [];
  });
}

function linesOf(type: unknown, value: unknown, place: string): Lines | undefined {
  switch (type) {
    case 'LineString':
      return [lineAt(value, place) ?? []].filter((line) => line.length > 0);
    case 'Polygon':
    case 'MultiLineString':
      return lines(value, place);
    case 'MultiPolygon':
      return listAt(value, place).flatMap((one, at) => lines(one, `${place}[${at}]`));
    default:
      return undefined;
  }
}

function gatherGeometry(
  into: Gathering,
  geometry: JsonObject,
  place: string,
  name: string | undefined,
): void {
  const { type, coordinates, geometries } = geometry;
  const at = (member: string) => (place === '' ? member : `${place}.${member}`);
  if (type === 'GeometryCollection') {
    listAt(geometries, at('geometries')).forEach((one, index) =>
      gather(into, one, `${at('geometries')}[${index}]`, name),
    );
    return;
  }
  if (type === 'Point' || type === 'MultiPoint') {
    into.points += type === 'Point' ? 1 : listAt(coordinates, at('coordinates')).length;
    return;
  }
  const found = linesOf(type, coordinates, at('coordinates'));
  if (!found)
    throw new Unfit(
      'notGeoJson',
      `${at('type')}: ${JSON.stringify(type ?? null)} is no kind of GeoJSON. Choose a GeoJSON file of outlines or lines.`,
    );
  const closed = type === 'Polygon' || type === 'MultiPolygon';
  if (found.length > 0)
    into.shapes.push({ ...(name === undefined ? {} : { name }), closed, lines: found });
}

/** Properties that mostly hold a name, best first; else the first whose key speaks of one. */
const nameKeys = [/^name$/i, /^(nom|nome)$/i, /name|nom/i];

function nameIn(properties: unknown): string | undefined {
  if (!isObject(properties)) return undefined;
  const texts = Object.entries(properties).filter(
    (pair): pair is [string, string] => typeof pair[1] === 'string' && pair[1].trim() !== '',
  );
  for (const key of nameKeys) {
    const found = texts.find(([name]) => key.test(name));
    if (found) return found[1].trim().slice(0, 80);
  }
  return undefined;
}

function gather(into: Gathering, value: unknown, place: string, name?: string): void {
  if (!isObject(value))
    throw new Unfit(
      'notGeoJson',
      `${place || 'The file'}: no GeoJSON stands there. Choose a GeoJSON file of outlines or lines.`,
    );
  const at = (member: string) => (place === '' ? member : `${place}.${member}`);
  if (value['type'] === 'FeatureCollection')
    listAt(value['features'], at('features')).forEach((one, index) =>
      gather(into, one, `${at('features')}[${index}]`),
    );
  else if (value['type'] !== 'Feature') gatherGeometry(into, value, place, name);
  // A feature may have no place at all.
  else if (value['geometry'] !== null)
    gather(into, value['geometry'], at('geometry'), nameIn(value['properties']));
}

/** Files from before the present rule may name another system: RFC 7946, section 4. */
function refuseOtherSystem(file: unknown): void {
  if (!isObject(file) || !isObject(file['crs'])) return;
  const name = JSON.stringify(file['crs']);
  if (/CRS84|EPSG:{1,2}(\d*:)?4326"/i.test(name)) return;
  throw new Unfit(
    'notDegrees',
    'crs: the file is in another coordinate system. Export it again in WGS 84 (EPSG:4326).',
  );
}

/** Where in the text it stops being JSON, as the engine's message tells. */
function placeIn(text: string, message: string): string {
  const position = Number(/position (\d+)/.exec(message)?.[1] ?? text.length);
  const before = text.slice(0, position).split('\n');
  return `Line ${before.length}, column ${before.at(-1)!.length + 1}`;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const place = placeIn(text, String(error));
    throw new Unfit(
      'notJson',
      `${place}: the file is not JSON from there on. Choose a GeoJSON file (.geojson or .json) that is whole.`,
    );
  }
}

/**
 * Reads outlines and lines from the text of a GeoJSON file (RFC 7946): a feature collection, a
 * feature or a geometry. A shape takes its name from its feature's properties. Refused with the
 * place of the first trouble: nothing of a bad file is taken.
 */
export function readBackdrop(text: string): Result<ReadBackdrop> {
  if (text.length > mostLetters)
    return refused(
      'tooLarge',
      `The file has more than ${mostLetters / 1e6} million letters. Simplify its outlines, or cut it to the area of the wells.`,
    );
  const into: Gathering = { shapes: [], points: 0 };
  try {
    const file = parsed(text.replace(/^\uFEFF/, ''));
    refuseOtherSystem(file);
    gather(into, file, '');
  } catch (error) {
    if (error instanceof Unfit) return error.refusal;
    throw error;
  }
  if (into.shapes.length === 0)
    return refused(
      'nothingToDraw',
      'The file holds no outline and no line. Choose a GeoJSON file of boundaries, roads or rivers.',
    );
  return ok({ shapes: into.shapes, pointsLeftOut: into.points });
}
