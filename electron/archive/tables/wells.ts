import { valueAt } from '../../../core/base/recordPath.ts';
import { wellStates, type WellState } from '../../../core/record/identity.ts';
import type { ReadHandle, WriteHandle } from '../handles.ts';
import { kept } from '../kept.ts';
import { everyWord } from '../words.ts';
import { sightRowOf, sightWritten, type Sight, type SightRow } from './sights.ts';

/** What a list says of a well. */
export interface ListedWell {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly district: string;
  readonly village: string;
  readonly state: WellState | '';
  /** Deepest point, metres below ground; absent when not known. */
  readonly depthM?: number;
  readonly revision: number;
  /** Something was typed that is in no revision yet. */
  readonly unrevised: boolean;
  readonly changedAt: string;
}

/** What a well's line is written from; the rest of it is its working copy's. */
export type WrittenWell = Omit<ListedWell, 'unrevised'>;

interface Row {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly district: string;
  readonly village: string;
  readonly state: string;
  readonly depth_m: number | null;
  readonly revision: number;
  readonly changed_at: string;
}

export interface ListedRow extends Row {
  readonly unrevised: 0 | 1;
}

function rowOf({ depthM, changedAt, ...well }: WrittenWell): Row {
  return { ...well, depth_m: depthM ?? null, changed_at: changedAt };
}

export function wellOf({ depth_m, changed_at, state, unrevised, ...row }: ListedRow): ListedWell {
  return {
    ...row,
    state: stateOf(state),
    unrevised: unrevised === 1,
    changedAt: changed_at,
    ...(depth_m === null ? {} : { depthM: depth_m }),
  };
}

const columns = 'id, number, name, district, village, state, depth_m, revision, changed_at';

/** Lines with what their working copies add; a well that was never edited has none. */
export const listedColumns = `${columns}, EXISTS (
  SELECT 1 FROM working WHERE well_id = id AND unrevised = 1) AS unrevised`;

function stateOf(value: unknown): WellState | '' {
  return wellStates.find((state) => state === value) ?? '';
}

/** Reads the columns from a record in any condition: half-typed work is listed too. */
export function listed(
  record: unknown,
  known: Pick<WrittenWell, 'id' | 'revision' | 'changedAt'>,
): WrittenWell {
  const text = (path: string) => {
    const value = valueAt(record, path);
    return typeof value === 'string' ? value.trim() : '';
  };
  const depthM = deepestM(record);
  return {
    ...known,
    number: text('identity.number'),
    name: text('identity.name'),
    district: text('site.district'),
    village: text('site.village'),
    state: stateOf(valueAt(record, 'identity.state')),
    ...(depthM === undefined ? {} : { depthM }),
  };
}

/** The depth reached where it was written; else the foot of the sections, else of the log. */
function deepestM(record: unknown): number | undefined {
  const reached = valueAt(record, 'bore.depthReached');
  if (typeof reached === 'number') return reached;
  return deepestFoot(valueAt(record, 'bore.sections')) ?? deepestFoot(valueAt(record, 'log'));
}

function deepestFoot(intervals: unknown): number | undefined {
  if (!Array.isArray(intervals)) return undefined;
  const feet = intervals
    .map((one) => valueAt(one, 'to'))
    .filter((foot): foot is number => typeof foot === 'number');
  return feet.length === 0 ? undefined : Math.max(...feet);
}

/** All wells outside the bin, or those in which every word begins a word; by district, then number. */
export function listWells(db: ReadHandle, search = ''): ListedWell[] {
  const order = 'ORDER BY district, number, seq';
  if (search.trim() === '')
    return db
      .prepare<[], ListedRow>(`SELECT ${listedColumns} FROM well WHERE binned_at IS NULL ${order}`)
      .all()
      .map(wellOf);
  const words = everyWord(search);
  if (words === '') return [];
  const found = `SELECT rowid FROM well_search WHERE well_search MATCH ?`;
  return db
    .prepare<[string], ListedRow>(
      `SELECT ${listedColumns} FROM well WHERE binned_at IS NULL AND seq IN (${found}) ${order}`,
    )
    .all(words)
    .map(wellOf);
}

export function findWell(db: ReadHandle, id: string): ListedWell | undefined {
  const row = kept<[string], ListedRow>(db, `SELECT ${listedColumns} FROM well WHERE id = ?`).get(
    id,
  );
  return row && wellOf(row);
}

/** Whether a well is there, outside the bin. */
export function isListed(db: ReadHandle, id: string): boolean {
  const sql = `SELECT 1 FROM well WHERE id = ? AND binned_at IS NULL`;
  return kept<[string]>(db, sql).get(id) !== undefined;
}

/** Ids of the wells outside the bin that have a number; by district, then as they came. */
export function idsNumbered(db: ReadHandle, number: string): string[] {
  const sql = `SELECT id FROM well WHERE number = ? AND binned_at IS NULL ORDER BY district, seq`;
  return kept<[string], { id: string }>(db, sql)
    .all(number)
    .map(({ id }) => id);
}

/** Ids of wells whose lines were read from their records in another way, first to last. */
export function listOutdated(db: ReadHandle, listedBy: number): string[] {
  const from = 'SELECT id, seq FROM well WHERE listed_by';
  return db
    .prepare<[number, number], string>(
      `SELECT id FROM (${from} < ? UNION ALL ${from} > ?) ORDER BY seq`,
    )
    .pluck()
    .all(listedBy, listedBy);
}

/** Every well's newest revision, those in the bin among them. */
export function listHeads(db: ReadHandle): Pick<ListedWell, 'id' | 'revision'>[] {
  return db.prepare<[], Pick<Row, 'id' | 'revision'>>('SELECT id, revision FROM well').all();
}

export function countWells(db: ReadHandle): number {
  return db.prepare<[], number>('SELECT count(*) FROM well WHERE binned_at IS NULL').pluck().get()!;
}

const written = [...columns.split(', '), ...sightWritten, 'listed_by'];

/** Writes a well's line, new or changed, by which way of reading records, and gives its seq. */
export function putWell(
  db: WriteHandle,
  well: WrittenWell,
  sight: Sight,
  listedBy: number,
): number {
  return kept<[Row & SightRow & { listed_by: number }], number>(
    db,
    `INSERT INTO well (${written.join(', ')})
     VALUES (${written.map((column) => `@${column}`).join(', ')})
     ON CONFLICT (id) DO UPDATE SET
       ${written.map((column) => `${column} = excluded.${column}`).join(', ')}
     RETURNING seq`,
  )
    .pluck()
    .get({ ...rowOf(well), ...sightRowOf(sight), listed_by: listedBy })!;
}
