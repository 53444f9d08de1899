import {
  headUnits,
  sensorToTape,
  type HeadUnit,
} from '../../core/hydraulics/fieldEntry/sensorLevel.ts';
import { readLogger, type LoggerChoice } from '../../core/exchange/logger/readLogger.ts';
import { loggerColumns } from '../../core/exchange/logger/loggerColumns.ts';

/** What a logger's values are: readings as of a tape, or water over the sensor in a unit. */
export type Shows = 'tape' | HeadUnit;
export const allShows: readonly Shows[] = ['tape', ...(Object.keys(headUnits) as HeadUnit[])];

/** All that has to be said of a file before its readings can be taken. */
export interface FileChoice extends Required<Omit<LoggerChoice, 'delimiter'>> {
  readonly shows: Shows;
  /** One reading of the tape, and the sensor's value then. */
  readonly tapeM: number | undefined;
  readonly valueThen: number | undefined;
  /** Minutes of the test at the first row; below nothing where the logger began before it. */
  readonly firstMinute: number;
}

export interface FileReading {
  readonly minutes: number;
  readonly reading: number;
}

export interface FileReadings {
  readonly readings: readonly FileReading[];
  /** Lines that could not be read. */
  readonly unread: number;
}

/** What is chosen to begin with; undefined for a file without columns. */
export function firstChoice(text: string, restM: number | undefined): FileChoice | undefined {
  const { columns, decimal } = loggerColumns(text);
  const [time, value] = columns;
  if (time === undefined || value === undefined) return undefined;
  return {
    time,
    value,
    decimal,
    dateOrder: 'ymd',
    timeUnit: 'min',
    shows: 'tape',
    tapeM: restM,
    valueThen: undefined,
    firstMinute: 0,
  };
}

const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));

/**
 * Readings of a test from a logger's file: minutes to a hundredth, levels to the millimetre. Rows
 * before the start of the test are left out; none come where the sensor cannot be brought to a tape.
 */
export function readingsOf(text: string, choice: FileChoice): FileReadings {
  const { shows, tapeM, firstMinute } = choice;
  const { readings, troubles } = readLogger(text, choice);
  const valueThen = choice.valueThen ?? readings[0]?.value;
  const levelOf = (value: number) => {
    if (shows === 'tape') return value;
    if (tapeM === undefined || valueThen === undefined) return undefined;
    return sensorToTape(value, { unit: shows, tapeM, valueThen });
  };
  const taken = readings.flatMap(({ minutes, value }): FileReading[] => {
    const level = levelOf(value);
    const at = rounded(minutes + firstMinute, 2);
    return level === undefined || at < 0 ? [] : [{ minutes: at, reading: rounded(level, 3) }];
  });
  return { readings: taken, unread: troubles.length };
}
