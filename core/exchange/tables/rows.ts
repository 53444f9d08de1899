import { parse, type CsvError } from 'csv-parse/browser/esm/sync';

/** One row of a table with the line of its file on which it begins, counted from 1. */
export interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface Rows {
  readonly heading: readonly string[];
  readonly rows: readonly Row[];
  /** Where the rest of the text could not be read, and why. */
  readonly broken?: { readonly line: number; readonly sentence: string };
}

interface Parsed {
  readonly record: readonly string[];
  readonly info: { readonly lines: number };
}

/** The parser says where a row ends; a cell may run over several lines. */
function rowOf({ record, info }: Parsed): Row {
  const inside = record.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0);
  return { line: info.lines - inside, cells: record };
}

/** Rows of delimited text. Blank lines are passed over; rows of any length are returned. */
export function readRows(text: string, delimiter: string): Rows {
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
  const [heading, ...rows] = parsed.map(rowOf);
  const found = { heading: (heading?.cells ?? []).map((name) => name.trim()), rows };
  if (faults.length === 0) return found;
  const last = parsed.at(-1)?.info.lines ?? 0;
  return {
    ...found,
    broken: {
      line: last + 1,
      sentence:
        'A quotation mark that opens here is never closed, so the rest of the file was not read. ' +
        'Close it, or take it out.',
    },
  };
}
