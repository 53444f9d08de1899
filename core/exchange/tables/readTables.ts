import type { WellRecord } from '../../record/schema.ts';
import { reason, type Reason } from '../reasons/reason.ts';
import { assemble, type Entry } from './assemble.ts';
import { writingOf, type Writing } from './cells.ts';
import { sourcesOf, type MappedTable, type TableMapping } from './mapping.ts';
import { readRow } from './readRow.ts';
import { headed, type Row, type Rows } from './rows.ts';
import { nameOfTable, textSource, type TableSource } from './source.ts';
import { told, type TableTrouble } from './trouble.ts';

/** A file's name and its text, decoded. */
export interface TableFile {
  readonly name: string;
  readonly text: string;
}

/** A well with the place where the tables first name it. */
export interface TableWell {
  readonly record: WellRecord;
  readonly file: string;
  readonly line: number;
}

export interface TablesRead {
  /** One record a well, in the order in which the wells are first named. */
  readonly records: readonly WellRecord[];
  /** The same, with their places. */
  readonly wells: readonly TableWell[];
  /** By table in the mapping's order, then by line. */
  readonly troubles: readonly TableTrouble[];
}

/** What came of one table: rows that stand, each with its well, and those that do not. */
interface TableRead {
  readonly entries: readonly (Entry & { readonly well: string })[];
  readonly troubles: readonly TableTrouble[];
}

/** Makes a trouble of a row that was left out. */
type Say = (line: number, column: string, says: Reason) => TableTrouble;

/** What a cell of a spreadsheet can hold; a longer one is no cell of a table of wells. */
const longestCell = 32_767;

/** Headings that a table must have, its wells' first. */
export function columnsNeeded(mapped: MappedTable): string[] {
  const sources = Object.keys(mapped.fields).flatMap((name) => sourcesOf(mapped, name));
  const named = sources.flatMap(({ column, columns, unitColumn }) => [
    column,
    ...(columns ?? []),
    unitColumn,
  ]);
  return [...new Set([mapped.well, ...named])].filter((column) => column !== undefined);
}

/** A column that is missing or doubled spoils every row, so the table is not read at all. */
function headingTroubles(mapped: MappedTable, { heading }: Rows, say: Say): TableTrouble[] {
  const twice = heading.filter((name, at) => heading.indexOf(name) !== at);
  return columnsNeeded(mapped).flatMap((column) => {
    if (!heading.includes(column)) return [say(1, column, reason('noColumn', { column }))];
    if (!twice.includes(column)) return [];
    return [say(1, column, reason('twoColumns', { column }))];
  });
}

/** What all rows of a table have in common. */
interface Context {
  readonly mapped: MappedTable;
  readonly heading: readonly string[];
  readonly writing: Writing;
  readonly say: Say;
}

function readOne(row: Row, { mapped, heading, writing, say }: Context): TableRead {
  const { line, cells } = row;
  const giant = cells.findIndex((cell) => cell.length > longestCell);
  const trouble = (column: string, says: Reason): TableRead => ({
    entries: [],
    troubles: [say(line, column, reason('leftOut', { says }))],
  });
  if (giant >= 0)
    return trouble(heading[giant] ?? '', reason('longCell', { letters: longestCell }));
  if (cells.length !== heading.length)
    return trouble('', reason('raggedRow', { cells: cells.length, headings: heading.length }));
  const byColumn = new Map(heading.map((name, at) => [name, cells[at]!]));
  const well = byColumn.get(mapped.well)!.trim();
  if (writing.absent.includes(well)) return trouble(mapped.well, reason('noWell'));
  const read = readRow(mapped, byColumn, writing);
  if ('nothing' in read) return { entries: [], troubles: [] };
  if ('values' in read)
    return { entries: [{ mapped, line, well, values: read.values }], troubles: [] };
  return {
    entries: [],
    troubles: read.troubles.map((one) =>
      say(line, one.column, reason('leftOut', { says: one.reason })),
    ),
  };
}

function readTable(mapping: TableMapping, mapped: MappedTable, source: TableSource): TableRead {
  const say: Say = (line, column, says) => ({
    ...{ file: nameOfTable(source), line, column },
    ...told(says),
    kept: false,
  });
  const writing = writingOf(mapping, mapped);
  const grid = source.rows({
    encoding: mapped.encoding ?? mapping.encoding,
    delimiter: mapped.delimiter ?? mapping.delimiter,
    decimal: writing.decimal,
  });
  const rows = headed(grid, mapped.headingLine);
  const troubles = headingTroubles(mapped, rows, say);
  if (troubles.length > 0) return { entries: [], troubles };
  const context = { mapped, heading: rows.heading, writing, say };
  const read = rows.rows.map((row) => readOne(row, context));
  const broken = rows.broken ? [say(rows.broken.line, '', rows.broken.says)] : [];
  return {
    entries: read.flatMap(({ entries }) => entries),
    troubles: [...read.flatMap((one) => one.troubles), ...broken],
  };
}

const placeOf = ({ file, sheet }: MappedTable) =>
  nameOfTable(sheet === undefined ? { name: file } : { name: file, sheet });

const isMeant = ({ file, sheet }: MappedTable, source: TableSource) =>
  source.name === file && (sheet === undefined || source.sheet === sheet);

function readMapped(mapping: TableMapping, mapped: MappedTable, sources: readonly TableSource[]) {
  const source = sources.find((one) => isMeant(mapped, one));
  if (source) return readTable(mapping, mapped, source);
  const says = told(reason('fileMissing', { file: mapped.file }));
  const trouble = { file: placeOf(mapped), line: 1, column: '', ...says, kept: false };
  return { entries: [], troubles: [trouble] };
}

type WellEntry = TableRead['entries'][number];

/** Where a well may have many rows, one that says otherwise than the first is told. */
function repeatTrouble(entry: WellEntry, first: WellEntry): TableTrouble[] {
  const { mapped, line, well, values } = entry;
  const same = JSON.stringify(values) === JSON.stringify(first.values);
  if (mapped.repeats === true && same) return [];
  const place = { file: placeOf(mapped), line, column: mapped.well };
  const says =
    mapped.repeats === true
      ? reason('saidOtherwise', { well, line: first.line })
      : reason('leftOut', { says: reason('saidAlready', { well }) });
  return [{ ...place, ...told(says), kept: mapped.repeats === true }];
}

/** Of several rows that describe one well as a whole the first stands. */
function setApartRepeats(read: TableRead, seen: Map<string, WellEntry>): TableRead {
  const entries: WellEntry[] = [];
  const troubles: TableTrouble[] = [];
  for (const entry of read.entries) {
    const first = seen.get(entry.well);
    if (entry.mapped.kind === 'wells' && first) troubles.push(...repeatTrouble(entry, first));
    else entries.push(entry);
    if (entry.mapped.kind === 'wells' && !first) seen.set(entry.well, entry);
  }
  return { entries, troubles: [...read.troubles, ...troubles] };
}

/** Keeps the order of first sight, so that the same files always give the same list. */
function byWell(entries: TableRead['entries']): Map<string, Entry[]> {
  const wells = new Map<string, Entry[]>();
  for (const entry of entries) {
    const known = wells.get(entry.well);
    if (known) known.push(entry);
    else wells.set(entry.well, [entry]);
  }
  return wells;
}

function byTableAndLine(mapping: TableMapping) {
  const places = mapping.tables.map(placeOf);
  const place = ({ file }: TableTrouble) => places.indexOf(file);
  return (a: TableTrouble, b: TableTrouble) => place(a) - place(b) || a.line - b.line;
}

/** A file that nobody asked for is told, lest its wells be missed without a word. */
function unnamedTroubles(mapping: TableMapping, sources: readonly TableSource[]): TableTrouble[] {
  const unnamed = sources.filter((source) => !mapping.tables.some((one) => isMeant(one, source)));
  return unnamed.map(nameOfTable).map((file) => ({
    ...{ file, line: 1, column: '', kept: false },
    ...told(reason('fileUnnamed', { file })),
  }));
}

/**
 * Wells from tables whose columns a mapping explains. Rows that name the same well come together
 * in one record. A row that cannot be read is left out whole and told in a trouble; what a table
 * does not say is absent. Never throws for bad tables.
 */
export function readSources(sources: readonly TableSource[], mapping: TableMapping): TablesRead {
  const seen = new Map<string, WellEntry>();
  const read = mapping.tables.map((mapped) =>
    setApartRepeats(readMapped(mapping, mapped, sources), seen),
  );
  const assembled = [...byWell(read.flatMap(({ entries }) => entries))].map(([well, entries]) => ({
    ...assemble(well, entries),
    file: placeOf(entries[0]!.mapped),
    line: entries[0]!.line,
  }));
  const troubles = [...read, ...assembled].flatMap((one) => one.troubles);
  return {
    records: assembled.map(({ record }) => record),
    wells: assembled.map(({ record, file, line }) => ({ record, file, line })),
    troubles: [...troubles.toSorted(byTableAndLine(mapping)), ...unnamedTroubles(mapping, sources)],
  };
}

/** Wells from tables of text that was decoded already; see `readSources`. */
export function readTables(files: readonly TableFile[], mapping: TableMapping): TablesRead {
  return readSources(
    files.map(({ name, text }) => textSource(name, text)),
    mapping,
  );
}
