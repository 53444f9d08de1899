import { ok, type Result } from '../../core/base/result.ts';
import type { DrillingMethod } from '../../core/record/bore.ts';
import type { PumpKind } from '../../core/record/headworks.ts';
import type { WellState } from '../../core/record/identity.ts';
import type { ListOrder, WellFilter } from '../../core/record/wellFilter.ts';
import type { ReadHandle, WriteHandle } from './handles.ts';
import {
  countFitting,
  findWells,
  findYears,
  listValues,
  nameWells,
  placeWells,
  rankOf,
  type Counted,
  type NamedWell,
  type Page,
  type PlacedWells,
  type SightedWell,
} from './tables/lists.ts';
import { newestDocument } from './tables/newest.ts';
import { countUncounted, listUncounted, putCounts, type FindingCounts } from './tables/sights.ts';

/** Counts the findings of a record in any condition, by the count of that number. */
export interface FindingCount {
  /** Above 0; another one where the program finds other things than before. */
  readonly number: number;
  count(document: unknown): FindingCounts;
}

export interface ListValues {
  readonly regions: readonly Counted[];
  readonly districts: readonly Counted[];
  readonly states: readonly Counted<WellState | ''>[];
  readonly methods: readonly Counted<DrillingMethod | ''>[];
  readonly pumps: readonly Counted<PumpKind | ''>[];
  readonly clients: readonly Counted[];
  readonly contractors: readonly Counted[];
  readonly years?: readonly [first: number, last: number];
}

/** Queries for lists and maps of many wells; none reads a record but `goThrough`. */
export interface Lists {
  find(filter: WellFilter, order: ListOrder, page: Page): Result<readonly SightedWell[]>;
  count(filter: WellFilter): Result<number>;
  rank(filter: WellFilter, order: ListOrder, id: string): Result<number | undefined>;
  named(ids: readonly string[]): Result<readonly NamedWell[]>;
  place(filter: WellFilter, most: number): Result<PlacedWells>;
  values(): Result<ListValues>;
  /** How many wells changed since they were gone through, or were gone through by another count. */
  uncounted(number: number): Result<number>;
  /** Goes through at most so many of those, in one transaction. */
  goThrough(count: FindingCount, most: number): Result<void>;
  /** Newest records, as they stand. */
  documents(ids: readonly string[]): Result<readonly unknown[]>;
}

/** How queries reach the archive's file. */
export interface Access {
  reading<T>(query: (db: ReadHandle) => Result<T>): Result<T>;
  writing<T>(change: (db: WriteHandle) => Result<T>): Result<T>;
}

function valuesOf(db: ReadHandle): ListValues {
  const years = findYears(db);
  return {
    regions: listValues(db, 'region'),
    districts: listValues(db, 'district'),
    states: listValues(db, 'state') as ListValues['states'],
    methods: listValues(db, 'method') as ListValues['methods'],
    pumps: listValues(db, 'pump') as ListValues['pumps'],
    clients: listValues(db, 'client'),
    contractors: listValues(db, 'contractor'),
    ...(years ? { years } : {}),
  };
}

export function listsOf({ reading, writing }: Access): Lists {
  return {
    find: (filter, order, page) => reading((db) => ok(findWells(db, filter, order, page))),
    count: (filter) => reading((db) => ok(countFitting(db, filter))),
    rank: (filter, order, id) => reading((db) => ok(rankOf(db, filter, order, id))),
    named: (ids) => reading((db) => ok(nameWells(db, ids))),
    place: (filter, most) => reading((db) => ok(placeWells(db, filter, most))),
    values: () => reading((db) => ok(valuesOf(db))),
    documents: (ids) => reading((db) => ok(ids.map((id) => newestDocument(db, id)))),
    uncounted: (number) => reading((db) => ok(countUncounted(db, number))),
    goThrough: ({ number, count }, most) =>
      writing((db) =>
        db
          .transaction((): Result<void> => {
            for (const id of listUncounted(db, number, most)) {
              const document = newestDocument(db, id);
              putCounts(db, id, { ...count(document), count: number });
            }
            return ok(undefined);
          })
          .immediate(),
      ),
  };
}
