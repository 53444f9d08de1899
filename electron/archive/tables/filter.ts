import { wellStates } from '../../../core/record/identity.ts';
import type {
  ListOrder,
  OrderBy,
  WellFilter,
  WorstFinding,
} from '../../../core/record/wellFilter.ts';
import { everyWord } from '../words.ts';

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

function years({ yearFrom, yearTo }: WellFilter): Condition[] {
  return [
    ...(yearFrom === undefined ? [] : [{ sql: 'year >= ?', values: [yearFrom] }]),
    ...(yearTo === undefined ? [] : [{ sql: 'year <= ?', values: [yearTo] }]),
  ];
}

/** A well that was not gone through has no findings to go by, so that it fits none. */
function found(findings: readonly WorstFinding[] = []): Condition[] {
  if (findings.length === 0) return [];
  const any = findings.map((one) => `(${worst[one]})`).join(' OR ');
  return [{ sql: `counted <> 0 AND (${any})`, values: [] }];
}

/** The wells that fit a filter, those in the bin never among them. */
export function conditionOf(filter: WellFilter): Condition {
  const all = [
    { sql: 'binned_at IS NULL', values: [] },
    ...searched(filter.search),
    ...anyOf('region', filter.regions),
    ...anyOf('district', filter.districts),
    ...anyOf('state', filter.states),
    ...years(filter),
    ...found(filter.findings),
  ];
  return {
    sql: all.map(({ sql }) => sql).join(' AND '),
    values: all.flatMap(({ values }) => values),
  };
}

/** How far a well has come, as the states are listed. */
const stateRank = `CASE state ${wellStates.map((one, at) => `WHEN '${one}' THEN ${at}`).join(' ')} END`;

/** What is not known, and so comes last in either direction; then what to sort by. */
const columns: Readonly<Record<OrderBy, readonly [unknown: string, ...by: string[]]>> = {
  number: ["number_key = ''", 'number_key', 'number'],
  name: ["name_key = ''", 'name_key'],
  village: ["village_key = ''", 'village_key'],
  district: ["district_key = ''", 'district_key'],
  state: ["state = ''", stateRank],
  year: ['year IS NULL', 'year'],
  depth: ['depth_m IS NULL', 'depth_m'],
  findings: ['counted = 0', 'errors', 'warnings', 'notes'],
  changed: ["changed_at = ''", 'changed_at'],
};

/** Wells that are alike in what they are sorted by stay in the order of their numbers. */
export function orderOf({ by, down = false }: ListOrder): string {
  const [unknown, ...keys] = columns[by];
  const sorted = keys.map((key) => `${key} ${down ? 'DESC' : 'ASC'}`);
  return [unknown, ...sorted, ...columns.number.slice(0, 2), 'seq'].join(', ');
}
