import { valueAt } from '../../../core/base/recordPath.ts';
import { sortKey } from '../../../core/base/text/sortKey.ts';
import { wellStates } from '../../../core/record/identity.ts';
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
  /** Place among the states. */
  readonly stateRank?: number;
  /** Cubic metres an hour; see `yieldOf`. */
  readonly yieldM3h?: number;
  readonly method: string;
  /** Kind of the pump. */
  readonly pump: string;
  readonly client: string;
  readonly contractor: string;
  /** Year of the last day of drilling, else of the first. */
  readonly year?: number;
  /** WGS 84, degrees; both or neither. */
  readonly position?: { readonly latitude: number; readonly longitude: number };
  readonly keys: Readonly<Record<'number' | 'name' | 'village' | 'district', string>>;
}

/** Stands for the number of a well that has none: after every number there is. */
export const numberless = '\u{10FFFF}';

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

const ratesOf = (rows: unknown, key: string): number[] =>
  (Array.isArray(rows) ? rows : [])
    .map((row) => valueAt(row, key))
    .filter((rate): rate is number => typeof rate === 'number');

/**
 * What the well gave when it was pumped longest at one rate, cubic metres an hour: the constant
 * rate of a test, else the highest of a test in steps, else the highest while its level was read,
 * else the flow of its strikes in sum.
 */
function yieldOf(record: unknown): number | undefined {
  const tests = valueAt(record, 'tests');
  const constant = ratesOf(tests, 'rate');
  const steps = (Array.isArray(tests) ? tests : []).flatMap((test) =>
    ratesOf(valueAt(test, 'series'), 'rate'),
  );
  const levels = ratesOf(valueAt(record, 'levels'), 'rate');
  const measured = [constant, steps, levels].find((rates) => rates.length > 0);
  if (measured) return Math.max(...measured);
  const strikes = ratesOf(valueAt(record, 'strikes'), 'flow');
  return strikes.length > 0 ? strikes.reduce((sum, flow) => sum + flow, 0) : undefined;
}

/** Reads what lists and maps need from a record in any condition. */
export function sightOf(record: unknown): Sight {
  const text = (path: string) => {
    const value = valueAt(record, path);
    return typeof value === 'string' ? value.trim() : '';
  };
  const year = yearOf(record);
  const stateRank = wellStates.findIndex((one) => one === text('identity.state'));
  const yieldM3h = yieldOf(record);
  const latitude = angle(record, 'site.latitude', 90);
  const longitude = angle(record, 'site.longitude', 180);
  const known = latitude !== undefined && longitude !== undefined;
  return {
    region: text('site.region'),
    ...(stateRank < 0 ? {} : { stateRank }),
    ...(yieldM3h === undefined ? {} : { yieldM3h }),
    method: text('bore.method'),
    pump: text('pump.kind'),
    client: text('identity.client'),
    contractor: text('identity.contractor'),
    ...(year === undefined ? {} : { year }),
    ...(known ? { position: { latitude, longitude } } : {}),
    keys: {
      number: sortKey(text('identity.number')) || numberless,
      name: sortKey(text('identity.name')),
      village: sortKey(text('site.village')),
      district: sortKey(text('site.district')),
    },
  };
}

/** A sight's columns beside those of the well's line. */
export const sightWritten = [
  'region',
  'state_rank',
  'yield_m3h',
  'method',
  'pump',
  'client',
  'contractor',
  'year',
  'latitude',
  'longitude',
  'number_key',
  'name_key',
  'village_key',
  'district_key',
] as const;

export type SightRow = Readonly<Record<(typeof sightWritten)[number], string | number | null>>;

export function sightRowOf({
  stateRank,
  yieldM3h,
  year,
  position,
  keys,
  ...same
}: Sight): SightRow {
  return {
    ...same,
    state_rank: stateRank ?? null,
    yield_m3h: yieldM3h ?? null,
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
    .prepare<[number, number, number], string>(
      `SELECT id FROM (
         SELECT id, counted, seq FROM well WHERE counted < ?
         UNION ALL SELECT id, counted, seq FROM well WHERE counted > ?
       ) ORDER BY counted, seq LIMIT ?`,
    )
    .pluck()
    .all(count, count, most);
}

export function countUncounted(db: ReadHandle, count: number): number {
  return db
    .prepare<[number, number], number>(
      `SELECT (SELECT count(*) FROM well WHERE counted < ?)
         + (SELECT count(*) FROM well WHERE counted > ?)`,
    )
    .pluck()
    .get(count, count)!;
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
