import { ok, refused, type Result } from '../../base/result.ts';
import type { GivenFile, Incoming } from '../incoming.ts';
import { jsonParts, type JsonPart } from '../json/places.ts';
import { wellFrom, type Place, type WellFrom } from '../laid/recordFrom.ts';
import { flatFields } from '../points/flatFields.ts';
import { nested } from '../points/nested.ts';
import { readPosition } from '../points/position.ts';
import { reason, type Reason } from '../reasons/reason.ts';
import { decode } from '../tables/decode.ts';
import { told, type TableTrouble } from '../tables/trouble.ts';
import { alikeValue } from './alikeNames.ts';

interface Feature {
  readonly id?: unknown;
  readonly geometry?: { readonly type?: unknown; readonly coordinates?: unknown } | null;
  readonly properties?: Readonly<Record<string, unknown>> | null;
}

interface Read extends WellFrom {
  /** Properties that no field is for. */
  readonly strange: readonly string[];
}

/** What the writer tells of the archive, which has its own once the well is in it. */
const ofArchive = ['revision', 'changed_at'];

const pathOf: ReadonlyMap<string, string> = new Map([
  ...flatFields.map(({ name, path }) => [name, path] as const),
  ...flatFields.map(({ path }) => [path.toLowerCase(), path] as const),
]);

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** Longitude first; a height is above the ellipsoid and not above the datum that a record names. */
function positionOf({ geometry }: Feature): object | { says: Reason } {
  if (!geometry) return {};
  const { type, coordinates } = geometry;
  const [x, y] = Array.isArray(coordinates) ? (coordinates as unknown[]) : [];
  if (type !== 'Point' || typeof x !== 'number' || typeof y !== 'number')
    return { says: reason('noPoint', { type: String(type) }) };
  return readPosition(y, x);
}

/** A number that stands as text is taken as one, where the field wants a number. */
function numberFrom(name: string, value: unknown): unknown {
  const wantsNumber = /_m$|_m3h$|^households$|^users$/.test(name);
  const isNumeral = typeof value === 'string' && /^[+-]?\d+(\.\d+)?$/.test(value.trim());
  return wantsNumber && isNumeral ? Number(value) : value;
}

function readFeature({ id, geometry, properties }: Feature, place: Place): Read {
  const position = positionOf({ geometry: geometry ?? null });
  const said = Object.entries(properties ?? {}).filter(([, value]) => value !== null);
  const own = said.flatMap(([name, value]) => {
    const path = pathOf.get(name.toLowerCase());
    return path === undefined ? [] : [[path, numberFrom(name, value)] as const];
  });
  const alike = alikeIn(said, new Set(own.map(([path]) => path)));
  const taken = [...own, ...alike.map(({ path, value }) => [path, value] as const)];
  const named = taken.some(([path]) => path === 'identity.number');
  const isUuid = typeof id === 'string' && /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(id);
  const number =
    named || isUuid || id === undefined ? [] : [['identity.number', String(id)] as const];
  const { site = {}, ...chapters } = nested([...number, ...taken]) as { site?: object };
  const placed = 'says' in position ? {} : position;
  const lost = 'says' in position ? [positionTrouble(place, position.says as Reason)] : [];
  const { well, troubles } = wellFrom({ ...chapters, site: { ...site, ...placed } }, place);
  const strange = said
    .map(([name]) => name)
    .filter((name) => !pathOf.has(name.toLowerCase()) && !ofArchive.includes(name))
    .filter((name) => !alike.some((one) => one.name === name));
  return { well, troubles: [...lost, ...troubles], strange };
}

/** Properties under names that tables of wells have, for the fields that no own name fills. */
function alikeIn(said: readonly (readonly [string, unknown])[], taken: ReadonlySet<string>) {
  const filled = new Set(taken);
  return said.flatMap(([name, value]) => {
    const alike = pathOf.has(name.toLowerCase()) ? undefined : alikeValue(name, value);
    if (!alike || filled.has(alike.path)) return [];
    filled.add(alike.path);
    return [{ name, ...alike }];
  });
}

const positionTrouble = ({ file, line }: Place, says: Reason): TableTrouble => ({
  ...{ file, line, column: 'geometry', kept: true },
  ...told(says),
});

/** Each feature with its line; a feature that stands alone is one too. */
function featureParts(text: string): JsonPart[] {
  const list = /"features"\s*:\s*(?=\[)/.exec(text);
  if (!list) return jsonParts(text);
  const start = list.index + list[0].length;
  const before = text.slice(0, start).split('\n').length - 1;
  return jsonParts(text.slice(start)).map((part) => ({ ...part, line: part.line + before }));
}

/** Whether a file is GeoJSON, by the type of what stands at its top. */
export function holdsGeoJson({ bytes }: GivenFile): boolean {
  const { text } = decode(bytes);
  return /^\s*\{/.test(text) && /"type"\s*:\s*"(FeatureCollection|Feature)"/.test(text);
}

function strangeTroubles(file: string, read: readonly Read[]): TableTrouble[] {
  const names = [...new Set(read.flatMap(({ strange }) => strange))];
  return names.map((name) => {
    const { well } = read.find(({ strange }) => strange.includes(name))!;
    const says = told(reason('propertyLeft', { name }));
    return { file, line: well.line, column: name, ...says, kept: true };
  });
}

/**
 * Points of a GeoJSON file as wells. Properties are matched by the names that the writer gives
 * (flatFields.ts), by the paths of the record, or by headings that tables of wells have
 * (alikeNames.ts); others are told once.
 */
export function readGeoJson({ name, bytes }: GivenFile): Result<Incoming> {
  const { text } = decode(bytes);
  let whole: unknown;
  try {
    whole = JSON.parse(text);
  } catch (error) {
    const sentence = `${name} is not whole JSON: ${(error as Error).message}. Write it again.`;
    return refused('geoJsonBroken', sentence);
  }
  const crs = isObject(whole) && 'crs' in whole ? JSON.stringify(whole.crs) : '';
  if (crs !== '' && !/CRS84|4326/.test(crs))
    return refused(
      'geoJsonGrid',
      `${name} names a coordinate system of its own; GeoJSON is read in WGS 84 degrees alone ` +
        '(RFC 7946). Convert it and read it again.',
    );
  const read = featureParts(text).map((part) =>
    readFeature(JSON.parse(part.text) as Feature, { file: name, line: part.line }),
  );
  const troubles = [...strangeTroubles(name, read), ...read.flatMap((one) => one.troubles)];
  return ok({
    wells: read.map(({ well }) => well),
    troubles: troubles.sort((a, b) => a.line - b.line),
  });
}
