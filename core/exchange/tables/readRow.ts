import { currentVersion, wellRecord } from '../../record/schema.ts';
import { sayIssue } from '../../record/sentences.ts';
import { reason, type Reason } from '../reasons/reason.ts';
import { readCell, type CellsByColumn, type HalfTime, type Writing } from './cells.ts';
import { fieldsOf, type TableKind } from './fields.ts';
import { sourcesOf, type MappedTable } from './mapping.ts';
import { told } from './trouble.ts';

/** What a row says, by the names of its kind's fields. */
export type Values = Readonly<Record<string, unknown>>;

export interface RowTrouble {
  readonly column: string;
  readonly sentence: string;
  readonly reason: Reason;
}

export type RowRead =
  | { readonly values: Values }
  | { readonly troubles: readonly RowTrouble[] }
  | { readonly nothing: true };

/** `{ 'site.country': 'x' }` becomes `{ site: { country: 'x' } }`. */
export function nest(values: Values): Record<string, unknown> {
  const nested: Record<string, unknown> = {};
  for (const [path, value] of Object.entries(values)) {
    const [chapter, field] = path.split('.') as [string, string?];
    if (field === undefined) nested[chapter] = value;
    else nested[chapter] = { ...(nested[chapter] as object | undefined), [field]: value };
  }
  return nested;
}

/** A record of this row alone, to which the record's own rules can be put. */
const aloneInRecord: Readonly<Record<TableKind, (values: Values) => object>> = {
  wells: nest,
  log: (values) => ({ log: [values] }),
  sections: (values) => ({ bore: { sections: [{ from: 0, ...values }] } }),
  pieces: (values) => ({ strings: [{ components: [values] }] }),
  fills: (values) => ({ annulus: [values] }),
  levels: (values) => ({ levels: [values] }),
  strikes: (values) => ({ strikes: [values] }),
};

/** A time without offset gives its day; the time as written goes among the remarks. */
function keepHalfTime(values: Values): Values {
  const { at, ...rest } = values;
  if (typeof at !== 'object') return values;
  const { day, asWritten } = at as HalfTime;
  const remark = [values['remark'], `Time as written: ${asWritten}`].filter(Boolean).join('; ');
  return { ...rest, at: day, remark };
}

/** The column to look at for a field: its first source's. */
function columnFor(mapped: MappedTable, name: string): string {
  const [one] = sourcesOf(mapped, name);
  return one?.column ?? one?.columns?.join(' + ') ?? '';
}

/** An interval without thickness says nothing; one upside down is a slip of the pen. */
function orderTroubles(mapped: MappedTable, { from, to }: Values): RowTrouble[] {
  if (typeof from !== 'number' || typeof to !== 'number' || to > from) return [];
  return [{ column: columnFor(mapped, 'to'), ...told(reason('upsideDown', { from, to })) }];
}

/** What the record's schema refuses, in the sentences that it has for records. */
function recordTroubles(mapped: MappedTable, values: Values): RowTrouble[] {
  const record = { schemaVersion: currentVersion, ...aloneInRecord[mapped.kind](values) };
  const issues = wellRecord.safeParse(record).error?.issues ?? [];
  return issues.map((issue) => {
    const steps = issue.path.filter((step) => typeof step === 'string');
    const name = mapped.kind === 'wells' ? steps.join('.') : steps.at(-1)!;
    const { code, values: named } = sayIssue(record, issue);
    const says = { phrase: { code, values: named } };
    return { column: columnFor(mapped, name), ...told(reason('ofRecord', { says })) };
  });
}

function readCells(mapped: MappedTable, cells: CellsByColumn, writing: Writing) {
  const values: Record<string, unknown> = {};
  const troubles: RowTrouble[] = [];
  for (const [name, field] of Object.entries(fieldsOf[mapped.kind])) {
    const cell = readCell(field, sourcesOf(mapped, name), cells, writing);
    if ('value' in cell) values[name] = cell.value;
    else if ('sentence' in cell) troubles.push(cell);
    else if (field.required) {
      const says = told(reason('emptyCell', { kind: mapped.kind, name }));
      troubles.push({ column: columnFor(mapped, name), ...says });
    }
  }
  return { values: keepWords(mapped, cells, keepHalfTime(values)), troubles };
}

/** What was understood of words stands beside the words themselves, whatever the mapping says. */
function keepWords(mapped: MappedTable, cells: CellsByColumn, values: Values): Values {
  if (mapped.kind !== 'log' || values['words'] !== undefined) return values;
  const [one] = sourcesOf(mapped, 'material').filter(({ understand }) => understand === true);
  const words = (one?.columns ?? [one?.column ?? ''])
    .map((column) => cells.get(column)?.trim() ?? '')
    .filter((text) => text !== '')
    .join('; ');
  return words === '' ? values : { ...values, words };
}

/** In a file of several kinds, a row says nothing of one whose needed columns are all empty. */
function saysNothing(mapped: MappedTable, cells: CellsByColumn, writing: Writing): boolean {
  if (mapped.sparse !== true) return false;
  const needed = Object.entries(fieldsOf[mapped.kind]).filter(([, { required }]) => required);
  const columns = needed.flatMap(([name]) =>
    sourcesOf(mapped, name).flatMap(({ column, columns }) => columns ?? column ?? []),
  );
  return columns.every((column) => writing.absent.includes(cells.get(column)!.trim()));
}

/** Values of one row, or everything that is wrong with it. */
export function readRow(mapped: MappedTable, cells: CellsByColumn, writing: Writing): RowRead {
  if (saysNothing(mapped, cells, writing)) return { nothing: true };
  const { values, troubles } = readCells(mapped, cells, writing);
  if (troubles.length === 0) troubles.push(...orderTroubles(mapped, values));
  if (troubles.length === 0) troubles.push(...recordTroubles(mapped, values));
  return troubles.length === 0 ? { values } : { troubles };
}
