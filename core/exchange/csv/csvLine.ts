import { withoutFormula } from './formula.ts';

const needsQuotes = /[",\r\n]|^\s|\s$/;

function cellText(text: string): string {
  const cell = withoutFormula(text);
  return needsQuotes.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** One row of comma-separated values (RFC 4180). No cell of it is run by a spreadsheet. */
export function csvLine(cells: readonly string[]): string {
  return `${cells.map(cellText).join(',')}\r\n`;
}
