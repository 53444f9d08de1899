/**
 * Tables out of published files whose own form is not a table, every value as it stands there.
 */

/**
 * One group of an AGS 4 file: its heading line, then its data lines, without the first cell.
 * By the format's rules a line holds one row and every cell is quoted.
 */
export function agsTable(text: string, group: string): string | undefined {
  const lines = text.replace(/^\uFEFF/, '').split(/\r?\n/);
  const start = lines.indexOf(`"GROUP","${group}"`);
  if (start < 0) return undefined;
  const end = lines.findIndex((line, at) => at > start && line.startsWith('"GROUP",'));
  const rows = lines
    .slice(start, end < 0 ? undefined : end)
    .filter((line) => /^"(HEADING|DATA)",/.test(line))
    .map((line) => line.replace(/^"(HEADING|DATA)",/, ''));
  return `${rows.join('\n')}\n`;
}

const quoted = (value: string | number | undefined) =>
  value === undefined
    ? ''
    : /[",\n]/.test(`${value}`)
      ? `"${`${value}`.replaceAll('"', '""')}"`
      : `${value}`;

/** A list of JSON objects: their keys in order of first sight, then a row for each object. */
export function jsonTable(objects: readonly Readonly<Record<string, string | number>>[]): string {
  const keys = [...new Set(objects.flatMap((object) => Object.keys(object)))];
  const rows = objects.map((object) => keys.map((key) => quoted(object[key])).join(','));
  return `${[keys.join(','), ...rows].join('\n')}\n`;
}
