import { known } from '../../base/known.ts';
import { minutesBetween } from '../../record/moment.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { PumpingTest } from '../../record/water.ts';
import type { AssumptionCode } from '../codes.ts';
import type { LeftOut } from '../results.ts';
import { perDay, ratesOf, stepRate, type Rates } from './rates.ts';
import { inOrderOfTime, readSeries, type Series, type SeriesReading } from './readSeries.ts';
import { stepsOf } from './steps.ts';

/** A row with its place in time; a step test has both counts. */
export interface TimedRow extends SeriesReading {
  readonly stepOf?: { readonly number: number; readonly minutes: number };
}

/** A test on one count of minutes, with its rates. */
export interface Timed extends Rates {
  readonly rows: readonly TimedRow[];
  readonly leftOut: readonly LeftOut[];
  readonly pumpedMin?: number;
}

const left = (rows: readonly SeriesReading[], why: LeftOut['why']): LeftOut[] =>
  rows.map(({ path, minutes }) => ({ path, why, minutes }));

/** Rows of a step test on one count of minutes, with the rate of each step. */
function timeSteps(rows: readonly SeriesReading[], test: PumpingTest): Timed {
  const { steps, assumptions } = stepsOf(rows, test);
  const rated = steps.map((step) => ({ ...step, rateM3h: stepRate(step.rows, test.rate) }));
  const ordered = rated.map((step) => ({ ...step, ...inOrderOfTime(step.rows) }));
  const usable = ordered.filter(({ rateM3h }) => rateM3h !== undefined && rateM3h > 0);
  const last = steps.at(-1);
  return {
    rows: usable.flatMap(({ fromMin, number, rising }) =>
      rising.map((row) => ({
        ...row,
        minutes: fromMin + row.minutes,
        stepOf: { number, minutes: row.minutes },
      })),
    ),
    leftOut: ordered.flatMap(({ rising, broken, rateM3h }) => [
      ...left(broken, 'outOfOrder'),
      ...(rateM3h !== undefined && rateM3h > 0 ? [] : left(rising, 'noRate')),
    ]),
    rates: usable.map(({ fromMin, rateM3h }) => ({ fromMin, rateM3d: perDay(rateM3h!) })),
    assumptions,
    ...known({ pumpedMin: last && last.fromMin + last.lengthMin }),
  };
}

function timeConstant(rows: readonly SeriesReading[], { rate, minutesPumped }: PumpingTest): Timed {
  const { rising, broken } = inOrderOfTime(rows);
  return {
    rows: rising,
    leftOut: left(broken, 'outOfOrder'),
    ...ratesOf(rising, rate),
    ...known({ pumpedMin: minutesPumped ?? rising.at(-1)?.minutes }),
  };
}

/**
 * A test whose pump stopped when a recovery began, by what both tell of it: the last one pumped
 * before it in the record, unless its start and length lead to another moment.
 */
export function pumpingBefore(record: WellRecord, index: number): number | undefined {
  const tests = record.tests ?? [];
  const recovery = tests[index]!;
  const found = tests.findLastIndex(({ kind }, at) => at < index && kind !== 'recovery');
  const pumping = tests[found];
  if (!pumping?.startedAt || !recovery.startedAt) return pumping && found;
  const between = minutesBetween(pumping.startedAt, recovery.startedAt);
  const pumped = pumping.minutesPumped ?? recovery.minutesPumped;
  if (between === undefined || pumped === undefined) return found;
  return Math.abs(between - pumped) <= 0.1 * pumped ? found : undefined;
}

/** Rates before a recovery: as it says itself, else those of the pumping before it. */
function ratesBefore(
  { rate, minutesPumped }: PumpingTest,
  before: Timed | undefined,
): Omit<Timed, 'rows' | 'leftOut'> {
  const same = minutesPumped === undefined || minutesPumped === before?.pumpedMin;
  const changed = before !== undefined && before.rates.length > 1 && same;
  const own = rate !== undefined && rate > 0 && !changed;
  const pumpedMin = minutesPumped ?? before?.pumpedMin;
  const codes: AssumptionCode[] = [
    ...(own || !before ? [] : (['rateFromPumpingTest'] as const)),
    ...(minutesPumped !== undefined || !before ? [] : (['pumpedFromPumpingTest'] as const)),
    ...(changed ? (['ratesSuperposed'] as const) : []),
  ];
  return {
    rates: own ? [{ fromMin: 0, rateM3d: perDay(rate) }] : (before?.rates ?? []),
    ...known({ pumpedMin }),
    assumptions: codes.map((code) => ({ code, values: {} })),
  };
}

function timePumping({ rows, leftOut }: Series, test: PumpingTest): Timed {
  const timed = test.kind === 'step' ? timeSteps(rows, test) : timeConstant(rows, test);
  return { ...timed, leftOut: [...leftOut, ...timed.leftOut] };
}

/**
 * A test on minutes since pumping began, or since it stopped; `beforeAt` is the place of the test
 * that was pumped before a recovery.
 */
export function timeTest(record: WellRecord, index: number, beforeAt: number | undefined): Timed {
  const test = record.tests![index]!;
  const series = readSeries(test, index);
  if (test.kind !== 'recovery') return timePumping(series, test);
  const before = beforeAt === undefined ? undefined : timeTest(record, beforeAt, undefined);
  const { rising, broken } = inOrderOfTime(series.rows);
  return {
    rows: rising,
    leftOut: [...series.leftOut, ...left(broken, 'outOfOrder')],
    ...ratesBefore(test, before),
  };
}
