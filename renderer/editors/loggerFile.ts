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
  /** Whether a long series is thinned out. */
  readonly thin: boolean;
}

/** A series longer than so many readings is offered to be thinned out. */
export const longSeries = 300;

export interface FileReading {
  readonly minutes: number;
  readonly reading: number;
}

export interface FileReadings {
  readonly readings: readonly FileReading[];
  /** How many there were before they were thinned out. */
  readonly all: number;
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
    thin: true,
  };
}

const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));

const perCycle = 40;
const changeM = 0.01;

/**
 * Readings that tell of a level: 40 to each log cycle of time, every one that lies a centimetre or
 * more off the last that was kept, as at the start of a step, and the last one.
 */
export function thinned(readings: readonly FileReading[]): FileReading[] {
  const kept: FileReading[] = [];
  for (const one of readings) {
    const last = kept.at(-1);
    const tells =
      last === undefined ||
      one === readings.at(-1) ||
      Math.abs(one.reading - last.reading) >= changeM ||
      last.minutes <= 0 ||
      Math.log10(one.minutes / last.minutes) >= 1 / perCycle;
    if (tells) kept.push(one);
  }
  return kept;
}

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
  const isThinned = choice.thin && taken.length > longSeries;
  return {
    readings: isThinned ? thinned(taken) : taken,
    all: taken.length,
    unread: troubles.length,
  };
}
