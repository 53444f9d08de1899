import type { Desk } from '../desk.ts';
import type { Field } from '../field.ts';
import { shownInRow, type Rows } from '../rows.ts';
import type { RowRange } from './range.ts';

/** A number of either sign, which no spreadsheet runs. */
const plain = /^[+-]?\d+([.,]\d*)?$/;
/** What a spreadsheet would run as a formula. */
const runs = /^[=+\-@]/;
const guarded = /^'(?=[=+\-@])/;

/**
 * A cell as spreadsheets copy it: with an apostrophe before what they would run as a formula, in
 * quotes where it holds a tab, a line or a quote itself.
 */
export function writeCell(text: string): string {
  const safe = runs.test(text) && !plain.test(text) ? `'${text}` : text;
  return /[\t\n\r"]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows as text with tabs, as it goes into a spreadsheet. */
export function sheetText(
  desk: Desk,
  rows: Rows,
  range: RowRange,
  columns: readonly Field[],
): string {
  const lines: string[] = [];
  for (let index = range.first; index <= range.last; index += 1)
    lines.push(columns.map((field) => writeCell(shownInRow(desk, rows, index, field))).join('\t'));
  return lines.join('\n');
}

const cellShape = /("(?:[^"]|"")*"(?=[\t\n]|$)|[^\t\n]*)([\t\n]|$)/y;

function readCell(raw: string): string {
  const inner = raw.startsWith('"') && raw.endsWith('"') && raw.length > 1;
  const text = inner ? raw.slice(1, -1).replaceAll('""', '"') : raw;
  return text.replace(guarded, '');
}

/** Lines of cells of a text that a spreadsheet copied. */
export function readSheetText(text: string): string[][] {
  const whole = text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
  const lines: string[][] = [[]];
  cellShape.lastIndex = 0;
  for (;;) {
    const [, raw = '', mark = ''] = cellShape.exec(whole) ?? [];
    lines.at(-1)?.push(readCell(raw));
    if (mark === '') return lines;
    if (mark === '\n') lines.push([]);
  }
}
