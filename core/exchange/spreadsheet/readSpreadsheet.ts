import readXlsxFile from 'read-excel-file/universal';
import { ok, refused, type Result } from '../../base/result.ts';
import type { GivenFile } from '../incoming.ts';
import type { Grid } from '../tables/rows.ts';
import { unpack } from './unpack.ts';

/** A sheet of a workbook. */
export interface SpreadsheetSheet {
  readonly sheet: string;
  readonly data: readonly (readonly Cell[])[];
}

export type Cell = string | number | boolean | Date | null;

/** Binary fractions show fifteen figures, as in the spreadsheet itself. */
const numberText = (value: number, decimal: '.' | ',') =>
  String(Number(value.toPrecision(15))).replace('.', decimal);

/** Midnight is how a workbook writes a day without a time. */
function momentText(value: Date): string {
  const text = value.toISOString();
  return text.slice(11, 19) === '00:00:00' ? text.slice(0, 10) : text.slice(0, 19);
}

function textOf(cell: Cell, decimal: '.' | ','): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return numberText(cell, decimal);
  return cell instanceof Date ? momentText(cell) : String(cell);
}

/**
 * Rows that hold anything, all as wide as the widest; a line is a row's number. Numbers are written
 * with the decimal mark that texts of the sheet have, days as ISO 8601.
 */
export function gridOf(data: SpreadsheetSheet['data'], decimal: '.' | ','): Grid {
  const width = data.reduce((most, row) => Math.max(most, row.length), 0);
  const rows = data.map((row, at) => ({
    line: at + 1,
    cells: Array.from({ length: width }, (_, column) => textOf(row[column] ?? null, decimal)),
  }));
  return { rows: rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== '')) };
}

/**
 * The sheets of a workbook in the form XLSX. Formulas are not run: their last results are read.
 */
export async function readSpreadsheet({
  name,
  bytes,
}: GivenFile): Promise<Result<readonly SpreadsheetSheet[]>> {
  const unpacked = unpack(name, bytes);
  if (!unpacked.ok) return unpacked;
  try {
    // The package's types say that a cell holds the maker of dates, where it holds a date.
    const sheets: unknown = await readXlsxFile(unpacked.value.slice().buffer);
    return ok(sheets as readonly SpreadsheetSheet[]);
  } catch {
    return refused(
      'notWorkbook',
      `${name} is not a whole workbook: open it in a spreadsheet program and save it again as XLSX.`,
    );
  }
}
