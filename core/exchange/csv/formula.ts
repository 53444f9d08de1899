/** How a cell begins that a spreadsheet would run (common practice), apostrophes before it aside. */
const runs = /^'*[=+\-@\t\r]/;

/** A number may begin with a sign, and is no formula. */
const numeral = /^[+-]?\d+(\.\d+)?(e[+-]?\d+)?$/i;

/** A cell that no spreadsheet runs: text that looks like a formula has an apostrophe before it. */
export function withoutFormula(text: string): string {
  return runs.test(text) && !numeral.test(text) ? `'${text}` : text;
}

/** The cell as it was before an apostrophe was put before it. */
export function asWritten(cell: string): string {
  return cell.startsWith("'") && runs.test(cell) ? cell.slice(1) : cell;
}
