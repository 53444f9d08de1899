import { readRows, type Row } from '../tables/rows.ts';
import { readStamp, sinceFirst, type DateOrder, type Stamp, type TimeUnit } from './stamp.ts';

/** Which columns of a logger's file to read, and how they are written. */
export interface LoggerChoice {
  /** Headings; spaces around them do not count. */
  readonly time: string;
  readonly value: string;
  /** `.` where absent. */
  readonly decimal?: '.' | ',';
  /** The commonest of tab, semicolon and comma where absent. */
  readonly delimiter?: string;
  /** `ymd` where absent. */
  readonly dateOrder?: DateOrder;
  /** Of times that are plain numbers; `min` where absent. */
  readonly timeUnit?: TimeUnit;
}

/** A row: minutes since the first, or since the count began where times are plain numbers. */
export interface LoggerReading {
  readonly line: number;
  readonly minutes: number;
  /** In the unit of the column: a level or a pressure. */
  readonly value: number;
}

export const loggerTroubleCodes = ['noColumn', 'notTime', 'notNumber', 'broken'] as const;

/** What could not be read, and where; the words are in `words.ts`. */
export interface LoggerTrouble {
  readonly code: (typeof loggerTroubleCodes)[number];
  readonly line: number;
  readonly column: string;
  readonly text: string;
}

export interface LoggerRead {
  readonly readings: readonly LoggerReading[];
  readonly troubles: readonly LoggerTrouble[];
}

const delimiters = ['\t', ';', ','] as const;

/** The mark that most lines have; a semicolon before a comma, which may be a decimal. */
export function guessDelimiter(text: string): string {
  const lines = text.split(/\r\n?|\n/).filter((line) => line.trim() !== '');
  const having = (mark: string) => lines.filter((line) => line.includes(mark)).length;
  return delimiters.find((mark) => having(mark) * 2 > lines.length) ?? ',';
}

function readNumber(text: string, decimal: '.' | ','): number | undefined {
  const plain = decimal === ',' ? text.replace('.', '?').replace(',', '.') : text;
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : undefined;
}

/** Rows after the heading; loggers write lines about themselves before it, which are passed over. */
function below(rows: readonly Row[], { time, value }: LoggerChoice) {
  const named = ({ cells }: Row) => {
    const names = cells.map((cell) => cell.trim());
    return names.includes(time.trim()) && names.includes(value.trim());
  };
  const at = rows.findIndex(named);
  const heading = rows[at]?.cells.map((cell) => cell.trim());
  return heading && { heading, rows: rows.slice(at + 1) };
}

/**
 * Reads times and levels or pressures from a logger's file. Rows that cannot be read are told and
 * left out; never throws.
 */
export function readLogger(text: string, choice: LoggerChoice): LoggerRead {
  const { decimal = '.', dateOrder = 'ymd', timeUnit = 'min' } = choice;
  const read = readRows(text, choice.delimiter ?? guessDelimiter(text));
  const broken: LoggerTrouble[] = read.broken
    ? [{ code: 'broken', line: read.broken.line, column: '', text: '' }]
    : [];
  const all = [{ line: 1, cells: read.heading }, ...read.rows];
  const found = below(all, choice);
  if (!found) {
    const column = `${choice.time}, ${choice.value}`;
    return { readings: [], troubles: [{ code: 'noColumn', line: 1, column, text: '' }, ...broken] };
  }
  const [timeAt, valueAt] = [choice.time, choice.value].map((name) =>
    found.heading.indexOf(name.trim()),
  );
  const rows: { line: number; stamp: Stamp; value: number }[] = [];
  const troubles: LoggerTrouble[] = [];
  for (const { line, cells } of found.rows) {
    const [time, shown] = [cells[timeAt!]?.trim() ?? '', cells[valueAt!]?.trim() ?? ''];
    const stamp = readStamp(time, readNumber(time, decimal), { dateOrder, timeUnit });
    const value = readNumber(shown, decimal);
    if (!stamp) troubles.push({ code: 'notTime', line, column: choice.time, text: time });
    else if (value === undefined)
      troubles.push({ code: 'notNumber', line, column: choice.value, text: shown });
    else rows.push({ line, stamp, value });
  }
  const minutes = sinceFirst(rows.map(({ stamp }) => stamp));
  return {
    readings: rows.map(({ line, value }, at) => ({ line, minutes: minutes[at]!, value })),
    troubles: [...troubles, ...broken],
  };
}
