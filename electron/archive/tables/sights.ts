import { valueAt } from '../../../core/base/recordPath.ts';
import { sortKey } from '../../../core/base/text/sortKey.ts';
import type { ReadHandle, WriteHandle } from '../handles.ts';
import { kept } from '../kept.ts';

/** How many findings a well has, by how much they weigh. */
export interface FindingCounts {
  readonly errors: number;
  readonly warnings: number;
  readonly notes: number;
}

/** What lists and maps know of a well besides its line. Absent means not known. */
export interface Sight {
  readonly region: string;
  /** Year of the last day of drilling, else of the first. */
  readonly year?: number;
  /** WGS 84, degrees; both or neither. */
  readonly position?: { readonly latitude: number; readonly longitude: number };
  readonly keys: Readonly<Record<'number' | 'name' | 'village' | 'district', string>>;
}

function yearOf(record: unknown): number | undefined {
  for (const day of ['bore.finishedOn', 'bore.startedOn']) {
    const written = valueAt(record, day);
    const [, year] = (typeof written === 'string' && /^(\d{4})-/.exec(written)) || [];
    if (year !== undefined) return Number(year);
  }
  return undefined;
}

function angle(record: unknown, path: string, most: number): number | undefined {
  const value = valueAt(record, path);
  return typeof value === 'number' && Math.abs(value) <= most ? value : undefined;
}

/** Reads what lists and maps need from a record in any condition. */
export function sightOf(record: unknown): Sight {
  const text = (path: string) => {
    const value = valueAt(record, path);
    return typeof value === 'string' ? value.trim() : '';
  };
  const year = yearOf(record);
  const latitude = angle(record, 'site.latitude', 90);
  const longitude = angle(record, 'site.longitude', 180);
  const known = latitude !== undefined && longitude !== undefined;
  return {
    region: text('site.region'),
    ...(year === undefined ? {} : { year }),
    ...(known ? { position: { latitude, longitude } } : {}),
    keys: {
      number: sortKey(text('identity.number')),
      name: sortKey(text('identity.name')),
      village: sortKey(text('site.village')),
      district: sortKey(text('site.district')),
    },
  };
}

/** A sight's columns beside those of the well's line. */
export const sightWritten = [
  'region',
  'year',
  'latitude',
  'longitude',
  'number_key',
  'name_key',
  'village_key',
  'district_key',
] as const;

export type SightRow = Readonly<Record<(typeof sightWritten)[number], string | number | null>>;

export function sightRowOf({ region, year, position, keys }: Sight): SightRow {
  return {
    region,
    year: year ?? null,
    latitude: position?.latitude ?? null,
    longitude: position?.longitude ?? null,
    number_key: keys.number,
    name_key: keys.name,
    village_key: keys.village,
    district_key: keys.district,
  };
}

/** Ids of wells that were not gone through by this count of findings, the oldest first. */
export function listUncounted(db: ReadHandle, count: number, most: number): string[] {
  return db
    .prepare<[number, number], string>(
      'SELECT id FROM well WHERE counted <> ? ORDER BY counted, seq LIMIT ?',
    )
    .pluck()
    .all(count, most);
}

export function countUncounted(db: ReadHandle, count: number): number {
  return db
    .prepare<[number], number>('SELECT count(*) FROM well WHERE counted <> ?')
    .pluck()
    .get(count)!;
}

/** Keeps how many findings a well has, by which count of them. */
export function putCounts(
  db: WriteHandle,
  id: string,
  { errors, warnings, notes, count }: FindingCounts & { readonly count: number },
): void {
  kept<[number, number, number, number, string]>(
    db,
    'UPDATE well SET errors = ?, warnings = ?, notes = ?, counted = ? WHERE id = ?',
  ).run(errors, warnings, notes, count, id);
}
