import type { WellState } from '../../../core/record/identity.ts';
import type { ListOrder, WellFilter } from '../../../core/record/wellFilter.ts';
import type { ReadHandle } from '../handles.ts';
import { kept } from '../kept.ts';
import { everyWord } from '../words.ts';
import { conditionOf, filterIndex, knownKeys, orderedBy, partsOf, unknownKeys } from './filter.ts';
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
  /** How many wells fit in all, where that was counted just before. */
  readonly fitting?: number;
}

/** Part of a list: wells of which is known what it is sorted by come first. */
type Part = 'known' | 'unknown';

/** How the wells of a list are come by: along its order, or by what they are filtered by. */
type Way = 'byOrder' | 'byFilter';

/** Wells that a way goes through to a page's end; what fits lies evenly along an order. */
function shorterWay(fitting: number, all: number, { from, limit }: Page): Way {
  const alongOrder = ((from + limit) * all) / Math.max(1, fitting);
  return alongOrder <= fitting ? 'byOrder' : 'byFilter';
}

/** A plus sign keeps SQLite from going by a column's index. */
const unindexed: Readonly<Record<Way, string>> = { byOrder: '', byFilter: '+' };

function seqsOf(
  db: ReadHandle,
  filter: WellFilter,
  order: ListOrder,
  part: Part,
  { from, limit, way }: Page & { readonly way: Way },
): number[] {
  const { sql, values } = conditionOf(filter);
  const known = part === 'known';
  const { index, unknownIndex = index, [part]: condition } = orderedBy[order.by];
  const keys = known ? knownKeys(order) : unknownKeys;
  const direction = known && order.down ? 'DESC' : 'ASC';
  const along = `INDEXED BY ${known ? index : unknownIndex}`;
  const by = way === 'byOrder' ? along : filterIndex(filter);
  return kept<unknown[], number>(
    db,
    `SELECT seq FROM well ${by}
     WHERE ${sql} AND ${condition}
     ORDER BY ${keys.map((key) => `${unindexed[way]}${key} ${direction}`).join(', ')} LIMIT ? OFFSET ?`,
  )
    .pluck()
    .all(...values, limit, from);
}

function countKnown(db: ReadHandle, filter: WellFilter, order: ListOrder): number {
  const { sql, values } = conditionOf(filter);
  const { index, known } = orderedBy[order.by];
  const by = values.length === 0 ? `INDEXED BY ${index}` : '';
  return kept<unknown[], number>(db, `SELECT count(*) FROM well ${by} WHERE ${sql} AND ${known}`)
    .pluck()
    .get(...values)!;
}

/** One page of the wells that fit, in order. */
export function findWells(
  db: ReadHandle,
  filter: WellFilter,
  order: ListOrder,
  { from, limit, fitting = countFitting(db, filter) }: Page,
): SightedWell[] {
  const way = shorterWay(fitting, countFitting(db, {}), { from, limit });
  const known = seqsOf(db, filter, order, 'known', { from, limit, way });
  const left = Math.min(limit, fitting - from) - known.length;
  const counts = left > 0 && known.length === 0 && from > 0;
  const before = counts ? countKnown(db, filter, order) : from;
  const page = { from: Math.max(0, from - before), limit: left, way };
  const unknown = left > 0 ? seqsOf(db, filter, order, 'unknown', page) : [];
  const line = kept<[number], Row>(
    db,
    `SELECT ${listedColumns}, ${sightColumns} FROM well WHERE seq = ?`,
  );
  return [...known, ...unknown].map((seq) => sightedOf(line.get(seq)!));
}

/** Which row a well stands in among those that fit, from 0. */
export function rankOf(
  db: ReadHandle,
  filter: WellFilter,
  order: ListOrder,
  id: string,
): number | undefined {
  const { sql, values } = conditionOf(filter);
  const known = orderedBy[order.by].known;
  const fits = kept<unknown[], 0 | 1>(db, `SELECT ${known} FROM well WHERE ${sql} AND id = ?`)
    .pluck()
    .get(...values, id);
  if (fits === undefined) return undefined;
  const keys = (fits ? knownKeys(order) : unknownKeys).join(', ');
  const part = orderedBy[order.by][fits ? 'known' : 'unknown'];
  const before = fits && order.down ? '>' : '<';
  const ahead = kept<unknown[], number>(
    db,
    `SELECT count(*) FROM well WHERE ${sql} AND ${part}
       AND (${keys}) ${before} (SELECT ${keys} FROM well WHERE id = ?)`,
  )
    .pluck()
    .get(...values, id)!;
  return fits ? ahead : ahead + countKnown(db, filter, order);
}

export function countFitting(db: ReadHandle, filter: WellFilter): number {
  const { searched, others } = partsOf(filter);
  const words = everyWord(filter.search ?? '');
  if (searched && others === 0 && words !== '')
    return kept<[string], number>(
      db,
      `SELECT count(*) FROM well_search WHERE well_search MATCH ?
         AND rowid NOT IN (SELECT seq FROM well WHERE binned_at IS NOT NULL)`,
    )
      .pluck()
      .get(words)!;
  const { sql, values } = conditionOf(filter);
  return kept<unknown[], number>(
    db,
    `SELECT count(*) FROM well ${filterIndex(filter)} WHERE ${sql}`,
  )
    .pluck()
    .get(...values)!;
}

export type NamedWell = Pick<ListedWell, 'id' | 'number' | 'name' | 'village'>;

/** Those outside the bin of some wells. */
export function nameWells(db: ReadHandle, ids: readonly string[]): NamedWell[] {
  const line = kept<[string], NamedWell>(
    db,
    'SELECT id, number, name, village FROM well WHERE id = ? AND binned_at IS NULL',
  );
  return ids.flatMap((id) => line.get(id) ?? []);
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

/** The wells of a map, and how many there are besides. */
export interface PlacedWells {
  /** By number, at most as many as were asked for. */
  readonly wells: readonly PlacedWell[];
  /** Of those that fit, how many have a position. */
  readonly placed: number;
  readonly fitting: number;
}

/** One in so many wells, or fewer: then each is looked up, else the index is gone through. */
const few = 10;

/** Wells that fit and have a position. */
export function placeWells(db: ReadHandle, filter: WellFilter, most: number): PlacedWells {
  const [fitting, all] = [countFitting(db, filter), countFitting(db, {})];
  const { sql, values } = conditionOf(filter);
  const by = fitting * few < all ? filterIndex(filter) : 'INDEXED BY well_filtered';
  const fits = `WHERE ${sql} AND latitude IS NOT NULL`;
  const placed = kept<unknown[], number>(db, `SELECT count(*) FROM well ${by} ${fits}`)
    .pluck()
    .get(...values)!;
  const way = shorterWay(placed, all, { from: 0, limit: most });
  const along = way === 'byOrder' ? 'INDEXED BY well_placed' : filterIndex(filter);
  const keys = [...unknownKeys].map((key) => `${unindexed[way]}${key}`).join(', ');
  const wells = kept<unknown[], PlacedWell>(
    db,
    `SELECT id, number, name, village, state, latitude, longitude FROM well ${along} ${fits}
     ORDER BY ${keys} LIMIT ?`,
  ).all(...values, most);
  return { wells, placed, fitting };
}

export interface Counted<T extends string = string> {
  readonly value: T;
  readonly wells: number;
}

/** Every value of a column among the wells outside the bin, in its order. */
export function listValues(
  db: ReadHandle,
  column: 'region' | 'district' | 'state' | 'method' | 'pump' | 'client' | 'contractor',
): readonly Counted[] {
  return db
    .prepare<[], Counted>(
      `SELECT ${column} AS value, count(*) AS wells FROM well WHERE binned_at IS NULL
       GROUP BY ${column} ORDER BY ${column} = '', ${column}`,
    )
    .all();
}

/** First and last year of drilling outside the bin, each read off an end of their index. */
export function findYears(db: ReadHandle): readonly [number, number] | undefined {
  const end = (which: 'min' | 'max') => `(SELECT ${which}(year) FROM well WHERE binned_at IS NULL)`;
  const row = db
    .prepare<[], { first: number | null; last: number | null }>(
      `SELECT ${end('min')} AS first, ${end('max')} AS last`,
    )
    .get()!;
  return row.first === null || row.last === null ? undefined : [row.first, row.last];
}
