import type { Encoding } from '../tables/decode.ts';
import type { Writing } from '../tables/cells.ts';
import type { Row } from '../tables/rows.ts';
import type { TableSource } from '../tables/source.ts';
import { headingWords, wellWords } from './headingWords.ts';
import { plainHeading } from './plainHeading.ts';

/** How a table seems to be written. */
export interface Detected {
  /** Of text. */
  readonly encoding?: Encoding;
  readonly delimiter?: string;
  /** Line on which the headings stand. */
  readonly headingLine: number;
  readonly decimal: Writing['decimal'];
  readonly dateOrder: Writing['dateOrder'];
  /** Words that stand in cells for nothing; left out where none do. */
  readonly absent?: readonly string[];
  /** No day told which order is meant; the day was taken to come first. */
  readonly dateOrderOpen: boolean;
}

const delimiters = [',', ';', '\t', '|'] as const;
/** Rows that are looked at: enough to be sure, few enough for a large file. */
const looked = 200;
/** Letters of a text that are looked at for its delimiter. */
const lookedLetters = 20_000;
/** Titles stand above headings in a few lines, if at all. */
const titleLines = 15;

/** The mark that cuts most lines into the same number of cells, two or more. */
function delimiterOf(source: TableSource, text: string): string {
  const start = text.slice(0, lookedLetters);
  const lines = start.split(/\r\n?|\n/).filter((line) => line.trim() !== '');
  const scored = delimiters.map((mark) => {
    const counts = new Map<number, number>();
    for (const line of lines) {
      const width = line.replace(/"[^"]*"/g, '').split(mark).length;
      if (width > 1) counts.set(width, (counts.get(width) ?? 0) + 1);
    }
    return { mark, alike: Math.max(0, ...counts.values()) };
  });
  const best = scored.toSorted((a, b) => b.alike - a.alike)[0]!;
  return best.alike === 0 || source.sheet !== undefined ? ',' : best.mark;
}

const known = new Set([
  ...wellWords,
  ...Object.values(headingWords).flatMap((fields) => Object.values(fields).flat()),
]);

const isNumber = (cell: string) => /^[+-]?\d+([.,]\d+)?$/.test(cell.trim());

/** How much a row looks like headings: known words count most, numbers against it. */
function headingScore({ cells }: Row): number {
  const filled = cells.filter((cell) => cell.trim() !== '');
  const names = filled.filter((cell) => known.has(plainHeading(cell).words)).length;
  const numbers = filled.filter(isNumber).length;
  return filled.length < 2 ? 0 : names * 3 + filled.length - numbers * 4;
}

function headingLineOf(rows: readonly Row[]): number {
  const first = rows.slice(0, titleLines);
  const scores = first.map(headingScore);
  const best = Math.max(...scores);
  return first[scores.indexOf(best)]?.line ?? 1;
}

function decimalOf(cells: readonly string[]): Writing['decimal'] {
  const having = (mark: RegExp) => cells.filter((cell) => mark.test(cell.trim())).length;
  return having(/^[+-]?\d+,\d+$/) > having(/^[+-]?\d+\.\d+$/) ? ',' : '.';
}

function dateOrderOf(cells: readonly string[]) {
  const days = cells.flatMap((cell) => {
    const parts = /^(\d{1,4})[-/.](\d{1,2})[-/.](\d{1,4})(?!\d)/.exec(cell.trim());
    return parts ? [[parts[1]!, Number(parts[2])] as const] : [];
  });
  const yearLast = days.filter(([first]) => first.length < 3);
  if (yearLast.length === 0) return { dateOrder: 'ymd', dateOrderOpen: false } as const;
  const dayFirst = yearLast.some(([first]) => Number(first) > 12);
  const dayNext = yearLast.some(([, second]) => second > 12);
  return {
    dateOrder: dayNext && !dayFirst ? 'mdy' : 'dmy',
    dateOrderOpen: dayFirst === dayNext,
  } as const;
}

/** How programs write that a cell holds nothing (common practice). */
const nothingWords = ['NA', 'N/A', 'n/a', 'NaN', 'nan', 'NULL', 'null', 'None', '-', '--'];

function absentIn(rows: readonly Row[]): readonly string[] {
  const seen = new Set<string>();
  for (const { cells } of rows)
    for (const cell of cells) if (cell.length < 5) seen.add(cell.trim());
  return nothingWords.filter((word) => seen.has(word));
}

/** Finds out how a table is written. All of it may be overruled in the mapping. */
export function detect(source: TableSource): Detected {
  const text = source.text?.();
  const delimiter = text && delimiterOf(source, text.text);
  const { rows } = source.rows({ encoding: text?.encoding, delimiter });
  const headingLine = headingLineOf(rows);
  const absent = absentIn(rows.filter(({ line }) => line > headingLine));
  const cells = rows
    .filter(({ line }) => line > headingLine)
    .slice(0, looked)
    .flatMap((row) => row.cells);
  return {
    ...(text ? { encoding: text.encoding, delimiter: delimiter! } : {}),
    headingLine,
    decimal: decimalOf(cells),
    ...dateOrderOf(cells),
    ...(absent.length > 0 ? { absent } : {}),
  };
}
