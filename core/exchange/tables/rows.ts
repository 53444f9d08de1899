import { parse, type CsvError } from 'csv-parse/browser/esm/sync';
import { asWritten } from '../csv/formula.ts';
import { reason, type Reason } from '../reasons/reason.ts';

/** One row of a table with the line of its file on which it begins, counted from 1. */
export interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

/** Rows of a table, its headings among them. */
export interface Grid {
  readonly rows: readonly Row[];
  /** Where the rest of the text could not be read, and why. */
  readonly broken?: { readonly line: number; readonly says: Reason };
}

export interface Rows extends Grid {
  readonly heading: readonly string[];
}

interface Parsed {
  readonly record: readonly string[];
  readonly info: { readonly lines: number };
}

/** The parser says where a row ends; a cell may run over several lines. */
function rowOf({ record, info }: Parsed): Row {
  const inside = record.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0);
  return { line: info.lines - inside, cells: record.map(asWritten) };
}

/** Rows of delimited text. Blank lines are passed over; rows of any length are returned. */
export function readGrid(text: string, delimiter: string): Grid {
  const faults: CsvError[] = [];
  const parsed = parse(text.replaceAll(/\r\n?/g, '\n'), {
    bom: true,
    delimiter,
    info: true,
    record_delimiter: '\n',
    relax_column_count: true,
    // An inch mark within a cell is not the start of a quotation.
    relax_quotes: true,
    skip_empty_lines: true,
    skip_records_with_error: true,
    on_skip: (error) => void (error && faults.push(error)),
  }) as unknown as Parsed[];
  const rows = parsed.map(rowOf);
  if (faults.length === 0) return { rows };
  const last = parsed.at(-1)?.info.lines ?? 0;
  return { rows, broken: { line: last + 1, says: reason('unclosedQuote') } };
}

/**
 * Takes the headings out of a grid: those on a line, or on the first row. What stands above them
 * is passed over.
 */
export function headed({ rows, ...rest }: Grid, line = 1): Rows {
  const at = Math.max(
    rows.findIndex((row) => row.line >= line),
    0,
  );
  const heading = (rows[at]?.cells ?? []).map((name) => name.trim());
  return { ...rest, heading, rows: rows.slice(at + 1) };
}

/** Rows of delimited text under the headings of its first row. */
export function readRows(text: string, delimiter: string): Rows {
  return headed(readGrid(text, delimiter));
}
