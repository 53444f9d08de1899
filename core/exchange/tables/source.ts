import { ok, type Result } from '../../base/result.ts';
import type { GivenFile } from '../incoming.ts';
import { tablesInJson, type JsonTable } from '../json/tablesInJson.ts';
import { gridOf, readSpreadsheet, type SpreadsheetSheet } from '../spreadsheet/readSpreadsheet.ts';
import { isZip } from '../spreadsheet/unpack.ts';
import { decode, type Encoding } from './decode.ts';
import { readGrid, type Grid } from './rows.ts';

/** How the cells of a table stand in its file. */
export interface Layout {
  readonly encoding?: Encoding | undefined;
  readonly delimiter?: string | undefined;
  readonly decimal?: '.' | ',' | undefined;
}

/** A file of text, one sheet of a workbook, or one list of a JSON file. */
export interface TableSource {
  /** Name of the file. */
  readonly name: string;
  /** Name of the sheet or key of the list; absent for text. */
  readonly sheet?: string;
  /** The text of a file in an encoding, or in the one that it seems to have. */
  text?(asked?: Encoding): { readonly text: string; readonly encoding: Encoding };
  rows(layout: Layout): Grid;
}

/** Text that was decoded already. */
export function textSource(name: string, text: string): TableSource {
  return {
    name,
    text: () => ({ text, encoding: 'utf-8' }),
    rows: ({ delimiter = ',' }) => readGrid(text, delimiter),
  };
}

function fileSource({ name, bytes }: GivenFile): TableSource {
  return {
    name,
    text: (asked) => decode(bytes, asked),
    rows: ({ encoding, delimiter = ',' }) => readGrid(decode(bytes, encoding).text, delimiter),
  };
}

function sheetSource(name: string, { sheet, data }: SpreadsheetSheet): TableSource {
  return { name, sheet, rows: ({ decimal = '.' }) => gridOf(data, decimal) };
}

function jsonSource(name: string, { key, grid }: JsonTable): TableSource {
  return {
    name,
    ...(key === '' ? {} : { sheet: key }),
    rows: ({ decimal = '.' }) => grid(decimal),
  };
}

/**
 * The tables of a file: the sheets of a workbook that hold anything, the lists of JSON, or its text. A workbook that
 * is not whole or too large is refused; nothing is read of text yet.
 */
export async function sourcesOfFile(file: GivenFile): Promise<Result<readonly TableSource[]>> {
  if (!isZip(file.bytes)) {
    const lists = tablesInJson(file);
    return ok(
      lists.length > 0 ? lists.map((one) => jsonSource(file.name, one)) : [fileSource(file)],
    );
  }
  const sheets = await readSpreadsheet(file);
  if (!sheets.ok) return sheets;
  const filled = sheets.value.filter(({ data }) => data.length > 0);
  return ok(filled.map((sheet) => sheetSource(file.name, sheet)));
}

/** A table as troubles name it. */
export function nameOfTable({ name, sheet }: Pick<TableSource, 'name' | 'sheet'>): string {
  return sheet === undefined ? name : `${name} [${sheet}]`;
}
