import type { WellRecord } from '../../record/schema.ts';
import { assemble, type Entry } from './assemble.ts';
import { writingOf, type Writing } from './cells.ts';
import { sourcesOf, type MappedTable, type TableMapping } from './mapping.ts';
import { readRow } from './readRow.ts';
import { readRows, type Row, type Rows } from './rows.ts';
import type { TableTrouble } from './trouble.ts';

/** A file's name and its text, decoded. */
export interface TableFile {
  readonly name: string;
  readonly text: string;
}

export interface TablesRead {
  /** One record a well, in the order in which the wells are first named. */
  readonly records: readonly WellRecord[];
  /** By table in the mapping's order, then by line. */
  readonly troubles: readonly TableTrouble[];
}

/** What came of one table: rows that stand, each with its well, and those that do not. */
interface TableRead {
  readonly entries: readonly (Entry & { readonly well: string })[];
  readonly troubles: readonly TableTrouble[];
}

/** Makes a trouble of a row that was left out. */
type Say = (line: number, column: string, sentence: string) => TableTrouble;

const leftOut = 'Correct it and read the file again; the row was left out.';

function columnsNeeded(mapped: MappedTable): string[] {
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
    if (!heading.includes(column))
      return [say(1, column, `The file has no column "${column}", so it was not read.`)];
    if (!twice.includes(column)) return [];
    return [say(1, column, `The file has two columns "${column}", so it was not read.`)];
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
  const trouble = (column: string, sentence: string): TableRead => ({
    entries: [],
    troubles: [say(line, column, `${sentence} ${leftOut}`)],
  });
  if (cells.length !== heading.length)
    return trouble('', `The row has ${cells.length} cells under ${heading.length} headings.`);
  const byColumn = new Map(heading.map((name, at) => [name, cells[at]!]));
  const well = byColumn.get(mapped.well)!.trim();
  if (writing.absent.includes(well)) return trouble(mapped.well, 'The row names no well.');
  const read = readRow(mapped, byColumn, writing);
  if ('nothing' in read) return { entries: [], troubles: [] };
  if ('values' in read)
    return { entries: [{ mapped, line, well, values: read.values }], troubles: [] };
  return {
    entries: [],
    troubles: read.troubles.map((one) => say(line, one.column, `${one.sentence} ${leftOut}`)),
  };
}

function readTable(mapping: TableMapping, mapped: MappedTable, text: string): TableRead {
  const say: Say = (line, column, sentence) => ({
    ...{ file: mapped.file, line, column, sentence },
    kept: false,
  });
  const rows = readRows(text, mapped.delimiter ?? mapping.delimiter ?? ',');
  const troubles = headingTroubles(mapped, rows, say);
  if (troubles.length > 0) return { entries: [], troubles };
  const context = { mapped, heading: rows.heading, writing: writingOf(mapping, mapped), say };
  const read = rows.rows.map((row) => readOne(row, context));
  const broken = rows.broken ? [say(rows.broken.line, '', rows.broken.sentence)] : [];
  return {
    entries: read.flatMap(({ entries }) => entries),
    troubles: [...read.flatMap((one) => one.troubles), ...broken],
  };
}

function readMapped(mapping: TableMapping, mapped: MappedTable, files: readonly TableFile[]) {
  const file = files.find(({ name }) => name === mapped.file);
  if (file) return readTable(mapping, mapped, file.text);
  const sentence = `The mapping names ${mapped.file}, which was not given.`;
  const trouble = { file: mapped.file, line: 1, column: '', sentence, kept: false };
  return { entries: [], troubles: [trouble] };
}

/** Of several rows that describe one well as a whole the first stands. */
function setApartRepeats(read: TableRead, seen: Set<string>): TableRead {
  const again = read.entries.filter(({ mapped, well }) => {
    if (mapped.kind !== 'wells') return false;
    const known = seen.has(well);
    seen.add(well);
    return known;
  });
  const troubles = again.map(({ mapped, line, well }) => ({
    ...{ file: mapped.file, line, column: mapped.well, kept: false },
    sentence: `Well "${well}" has a row above already. ${leftOut}`,
  }));
  return {
    entries: read.entries.filter((entry) => !again.includes(entry)),
    troubles: [...read.troubles, ...troubles],
  };
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
  const place = ({ file }: TableTrouble) => mapping.tables.findIndex((one) => one.file === file);
  return (a: TableTrouble, b: TableTrouble) => place(a) - place(b) || a.line - b.line;
}

/** A file that nobody asked for is told, lest its wells be missed without a word. */
function unnamedTroubles(mapping: TableMapping, files: readonly TableFile[]): TableTrouble[] {
  const unnamed = files.filter(({ name }) => !mapping.tables.some(({ file }) => file === name));
  return unnamed.map(({ name }) => ({
    ...{ file: name, line: 1, column: '', kept: false },
    sentence: `The mapping does not name ${name}, so it was not read.`,
  }));
}

/**
 * Wells from tables whose columns a mapping explains. Rows that name the same well come together
 * in one record. A row that cannot be read is left out whole and told in a trouble; what a table
 * does not say is absent. Never throws for bad tables.
 */
export function readTables(files: readonly TableFile[], mapping: TableMapping): TablesRead {
  const seen = new Set<string>();
  const read = mapping.tables.map((mapped) =>
    setApartRepeats(readMapped(mapping, mapped, files), seen),
  );
  const wells = byWell(read.flatMap(({ entries }) => entries));
  const assembled = [...wells].map(([well, entries]) => assemble(well, entries));
  const troubles = [...read, ...assembled].flatMap((one) => one.troubles);
  return {
    records: assembled.map(({ record }) => record),
    troubles: [...troubles.toSorted(byTableAndLine(mapping)), ...unnamedTroubles(mapping, files)],
  };
}
