import { readRows } from '../tables/rows.ts';
import { guessDelimiter } from './readLogger.ts';

const isNumber = (cell: string) => /^[+-]?\d*[.,]?\d+(e[+-]?\d+)?$/i.test(cell.trim());

/** What a logger's file offers to choose from, and how it seems to write its numbers. */
export interface LoggerColumns {
  /** Headings in the file's order; empty where the file has none. */
  readonly columns: readonly string[];
  readonly decimal: '.' | ',';
}

/**
 * The headings of a logger's file: the last row of names before the first row of numbers that is
 * as wide, since loggers write lines about themselves first. Never throws.
 */
export function loggerColumns(text: string): LoggerColumns {
  const delimiter = guessDelimiter(text);
  const { heading, rows } = readRows(text, delimiter);
  const all = [heading, ...rows.map(({ cells }) => cells)];
  const first = all.findIndex((cells, at) => {
    const names = all[at - 1];
    const wide = cells.length > 1 && names !== undefined && names.length === cells.length;
    return wide && cells.some(isNumber) && !names.some(isNumber);
  });
  const names = (all[first - 1] ?? []).map((name) => name.trim()).filter((name) => name !== '');
  const cells = all.slice(Math.max(first, 0)).flat();
  const commas = delimiter !== ',' && cells.some((cell) => /^[+-]?\d+,\d+$/.test(cell.trim()));
  return { columns: names, decimal: commas ? ',' : '.' };
}
