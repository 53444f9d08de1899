import type { WellState } from '../../../core/record/identity.ts';
import type { ListOrder, WellFilter } from '../../../core/record/wellFilter.ts';
import type { ReadHandle } from '../handles.ts';
import { conditionOf, orderOf } from './filter.ts';
import type { FindingCounts } from './sights.ts';
import { listedColumns, wellOf, type ListedRow, type ListedWell } from './wells.ts';

/** A well's line with what lists know of it besides. */
export interface SightedWell extends ListedWell {
  readonly region: string;
  readonly year?: number;
  /** Absent while the well was not gone through since it was changed. */
  readonly findings?: FindingCounts;
}

interface SightRow {
  readonly region: string;
  readonly year: number | null;
  readonly errors: number;
  readonly warnings: number;
  readonly notes: number;
  readonly counted: number;
}

type Row = ListedRow & SightRow;

const sightColumns = 'region, year, errors, warnings, notes, counted';

function sightedOf({ region, year, errors, warnings, notes, counted, ...row }: Row): SightedWell {
  return {
    ...wellOf(row),
    region,
    ...(year === null ? {} : { year }),
    ...(counted === 0 ? {} : { findings: { errors, warnings, notes } }),
  };
}

export interface Page {
  readonly from: number;
  readonly limit: number;
}

/** One page of the wells that fit, in order. */
export function findWells(
  db: ReadHandle,
  filter: WellFilter,
  order: ListOrder,
  { from, limit }: Page,
): SightedWell[] {
  const { sql, values } = conditionOf(filter);
  return db
    .prepare<unknown[], Row>(
      `SELECT ${listedColumns}, ${sightColumns} FROM well WHERE ${sql}
       ORDER BY ${orderOf(order)} LIMIT ? OFFSET ?`,
    )
    .all(...values, limit, from)
    .map(sightedOf);
}

/** Which row a well stands in among those that fit, from 0. */
export function rankOf(
  db: ReadHandle,
  filter: WellFilter,
  order: ListOrder,
  id: string,
): number | undefined {
  const { sql, values } = conditionOf(filter);
  return db
    .prepare<unknown[], number>(
      `SELECT at FROM (
         SELECT id, row_number() OVER (ORDER BY ${orderOf(order)}) - 1 AS at FROM well WHERE ${sql}
       ) WHERE id = ?`,
    )
    .pluck()
    .get(...values, id);
}

export function countFitting(db: ReadHandle, filter: WellFilter): number {
  const { sql, values } = conditionOf(filter);
  return db
    .prepare<unknown[], number>(`SELECT count(*) FROM well WHERE ${sql}`)
    .pluck()
    .get(...values)!;
}

/** A well that has a position. */
export interface PlacedWell {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly village: string;
  readonly state: WellState | '';
  readonly latitude: number;
  readonly longitude: number;
}

/** Wells that fit and have a position, by number, and how many of those that fit have one. */
export function placeWells(
  db: ReadHandle,
  filter: WellFilter,
  most: number,
): { readonly wells: readonly PlacedWell[]; readonly placed: number } {
  const { sql, values } = conditionOf(filter);
  const from = `FROM well WHERE ${sql} AND latitude IS NOT NULL`;
  const wells = db
    .prepare<unknown[], PlacedWell>(
      `SELECT id, number, name, village, state, latitude, longitude ${from}
       ORDER BY ${orderOf({ by: 'number' })} LIMIT ?`,
    )
    .all(...values, most);
  const placed = db
    .prepare<unknown[], number>(`SELECT count(*) ${from}`)
    .pluck()
    .get(...values)!;
  return { wells, placed };
}

export interface Counted {
  readonly value: string;
  readonly wells: number;
}

/** Every value of a column among the wells outside the bin, in its order. */
export function listValues(
  db: ReadHandle,
  column: 'region' | 'district' | 'state',
): readonly Counted[] {
  return db
    .prepare<[], Counted>(
      `SELECT ${column} AS value, count(*) AS wells FROM well WHERE binned_at IS NULL
       GROUP BY ${column} ORDER BY ${column} = '', ${column}`,
    )
    .all();
}

/** First and last year of drilling outside the bin. */
export function findYears(db: ReadHandle): readonly [number, number] | undefined {
  const row = db
    .prepare<[], { first: number | null; last: number | null }>(
      'SELECT min(year) AS first, max(year) AS last FROM well WHERE binned_at IS NULL',
    )
    .get()!;
  return row.first === null || row.last === null ? undefined : [row.first, row.last];
}
