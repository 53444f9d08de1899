import type {
  ListOrder,
  OrderBy,
  WellFilter,
  WorstFinding,
} from '../../../core/record/wellFilter.ts';
import { everyWord } from '../words.ts';
import { numberless } from './sights.ts';

/** A condition in SQL with the values that it is bound to. */
export interface Condition {
  readonly sql: string;
  readonly values: readonly (string | number)[];
}

const worst: Readonly<Record<WorstFinding, string>> = {
  wrong: 'errors > 0',
  look: 'errors = 0 AND warnings > 0',
  none: 'errors = 0 AND warnings = 0',
};

function anyOf(column: string, values: readonly string[] | undefined): Condition[] {
  if (values === undefined || values.length === 0) return [];
  return [{ sql: `${column} IN (${values.map(() => '?').join(', ')})`, values }];
}

/** A search without a single word in it, as `***`, finds nothing; one that is blank finds all. */
function searched(search = ''): Condition[] {
  if (search.trim() === '') return [];
  const words = everyWord(search);
  if (words === '') return [{ sql: '0', values: [] }];
  return [
    { sql: 'seq IN (SELECT rowid FROM well_search WHERE well_search MATCH ?)', values: [words] },
  ];
}

function range(column: string, from: number | undefined, to: number | undefined): Condition[] {
  return [
    ...(from === undefined ? [] : [{ sql: `${column} >= ?`, values: [from] }]),
    ...(to === undefined ? [] : [{ sql: `${column} <= ?`, values: [to] }]),
  ];
}

/** A well that was not gone through has no findings to go by, so that it fits none. */
function found(findings: readonly WorstFinding[] = []): Condition[] {
  if (findings.length === 0) return [];
  const any = findings.map((one) => `(${worst[one]})`).join(' OR ');
  return [{ sql: `counted <> 0 AND (${any})`, values: [] }];
}

/** How many parts of a filter ask something, and whether words are among them. */
export function partsOf({ search = '', ...rest }: WellFilter): {
  readonly searched: boolean;
  readonly others: number;
} {
  const asked = Object.values(rest).filter((one) => !(Array.isArray(one) && one.length === 0));
  return { searched: search.trim() !== '', others: asked.length };
}

/**
 * The index that a filter of several parts is answered in alone; one part has an index of its own,
 * and words alone lead to their wells.
 */
export function filterIndex(filter: WellFilter): string {
  const { searched, others } = partsOf(filter);
  return others > (searched ? 0 : 1) ? 'INDEXED BY well_filtered' : '';
}

/** The wells that fit a filter, those in the bin never among them. */
export function conditionOf(filter: WellFilter): Condition {
  const all = [
    { sql: 'binned_at IS NULL', values: [] },
    ...searched(filter.search),
    ...anyOf('region', filter.regions),
    ...anyOf('district', filter.districts),
    ...anyOf('state', filter.states),
    ...anyOf('method', filter.methods),
    ...anyOf('pump', filter.pumps),
    ...anyOf('client', filter.clients),
    ...anyOf('contractor', filter.contractors),
    ...range('year', filter.yearFrom, filter.yearTo),
    ...range('depth_m', filter.depthFrom, filter.depthTo),
    ...range('yield_m3h', filter.yieldFrom, filter.yieldTo),
    ...found(filter.findings),
  ];
  return {
    sql: all.map(({ sql }) => sql).join(' AND '),
    values: all.flatMap(({ values }) => values),
  };
}

/** An order, with the parts of the list that it comes in: what is known, then what is not. */
interface OrderedBy {
  readonly index: string;
  readonly known: string;
  readonly unknown: string;
  /** Where another index has what is not known in the order of the numbers. */
  readonly unknownIndex?: string;
  /** What to sort by; wells that are alike in it stand by their numbers. */
  readonly keys: readonly string[];
}

const byText = (column: string, index: string, ...then: string[]): OrderedBy => ({
  index,
  known: `${column} > ''`,
  unknown: `${column} = ''`,
  keys: [column, ...then],
});

const byNumber = (column: string, index: string): OrderedBy => ({
  index,
  known: `${column} IS NOT NULL`,
  unknown: `${column} IS NULL`,
  keys: [column, 'number_key'],
});

export const orderedBy: Readonly<Record<OrderBy, OrderedBy>> = {
  number: {
    ...{ index: 'well_number', keys: ['number_key', 'number'] },
    known: `number_key < '${numberless}'`,
    unknown: `number_key = '${numberless}'`,
  },
  name: byText('name_key', 'well_name', 'number_key'),
  village: byText('village_key', 'well_village', 'number_key'),
  district: byText('district_key', 'well_district', 'number_key'),
  state: byNumber('state_rank', 'well_state'),
  year: byNumber('year', 'well_year'),
  depth: byNumber('depth_m', 'well_depth'),
  findings: {
    ...{ index: 'well_findings', known: 'counted <> 0' },
    ...{ unknown: 'counted = 0', unknownIndex: 'well_unfound' },
    keys: ['errors', 'warnings', 'notes', 'number_key'],
  },
  changed: byText('changed_at', 'well_changed', 'number_key'),
};

/** Columns that put the known part in order, no two wells alike; a list that goes down turns all. */
export const knownKeys = ({ by }: ListOrder): readonly string[] => [...orderedBy[by].keys, 'seq'];

/** Columns that put in order what is not known, the same in either direction. */
export const unknownKeys = ['number_key', 'seq'] as const;
