import { valueAt } from '../../../core/base/recordPath.ts';
import { sortKey } from '../../../core/base/text/sortKey.ts';
import type { ReadHandle, WriteHandle } from '../handles.ts';

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

/** Keeps what was found out of a well, by which count of the findings. */
export function putSight(
  db: WriteHandle,
  id: string,
  { region, year, position, keys }: Sight,
  counts: FindingCounts & { readonly count: number },
): void {
  db.prepare(
    `UPDATE well SET
       region = @region, year = @year, latitude = @latitude, longitude = @longitude,
       number_key = @number, name_key = @name, village_key = @village, district_key = @district,
       errors = @errors, warnings = @warnings, notes = @notes, counted = @count
     WHERE id = @id`,
  ).run({
    id,
    region,
    year: year ?? null,
    latitude: position?.latitude ?? null,
    longitude: position?.longitude ?? null,
    ...keys,
    ...counts,
  });
}
