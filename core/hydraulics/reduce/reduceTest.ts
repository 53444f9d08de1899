import { known } from '../../base/known.ts';
import { writePath, type RecordPath } from '../../base/recordPath.ts';
import type { DepthM, Metres } from '../../base/units.ts';
import { roundDepth } from '../../model/range.ts';
import type { WellModel } from '../../model/wellModel.ts';
import { minutesBetween } from '../../record/moment.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { PumpingTest } from '../../record/water.ts';
import type { AssumptionCode, MissingCode } from '../codes.ts';
import { rateAt } from '../ratesOverTime.ts';
import type { LeftOut, MissingForTest, Said, TestReading } from '../results.ts';
import type { Drawdowns } from '../setting.ts';
import { perDay, ratesOf, stepRate, type Rates } from './rates.ts';
import { inOrderOfTime, readSeries, type SeriesReading } from './readSeries.ts';
import { datumHeightM, depthOf, restOf } from './restLevel.ts';
import { stepsOf } from './steps.ts';

/** A test as drawdowns, before any method. */
export interface ReducedTest extends Drawdowns {
  readonly index: number;
  readonly path: RecordPath;
  readonly test: PumpingTest;
  readonly restReadM?: Metres;
  readonly restDepthM?: DepthM;
  readonly assumptions: readonly Said<AssumptionCode>[];
  readonly missing: readonly MissingForTest[];
}

/** A row with its place in time; a step test has both counts. */
interface TimedRow extends SeriesReading {
  readonly stepOf?: { readonly number: number; readonly minutes: number };
}

interface Timed extends Rates {
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

function timeRecovery(
  rows: readonly SeriesReading[],
  test: PumpingTest,
  before: Timed | undefined,
): Timed {
  const { rising, broken } = inOrderOfTime(rows);
  return { rows: rising, leftOut: left(broken, 'outOfOrder'), ...ratesBefore(test, before) };
}

function timePumping(record: WellRecord, index: number): Timed {
  const test = record.tests![index]!;
  const { rows } = readSeries(test, index);
  return test.kind === 'step' ? timeSteps(rows, test) : timeConstant(rows, test);
}

function missingOf(test: PumpingTest, timed: Timed, rest: Metres | undefined): MissingCode[] {
  return [
    ...((test.series ?? []).length === 0 ? (['series'] as const) : []),
    ...(rest === undefined ? (['restLevel'] as const) : []),
    ...(timed.rates.length === 0 ? (['rate'] as const) : []),
    ...(test.kind === 'recovery' && timed.pumpedMin === undefined
      ? (['minutesPumped'] as const)
      : []),
  ];
}

/** Field of a test that would tell what is missing. */
const fieldOf: Readonly<Record<string, string>> = {
  series: 'series',
  restLevel: 'restLevel',
  rate: 'rate',
  minutesPumped: 'minutesPumped',
};

function why(
  { minutes, readM, path }: TimedRow,
  test: PumpingTest,
  restM: Metres,
  heightM: Metres | undefined,
  startMin: number,
): LeftOut[] {
  const said = (code: LeftOut['why']) => [{ path, why: code, minutes }];
  if (!(minutes > startMin)) return said('notAfterStart');
  if (!(roundDepth(readM - restM) > 0)) return said('aboveRest');
  const { pumpIntake = Infinity } = test;
  return heightM !== undefined && readM - heightM > pumpIntake ? said('belowIntake') : [];
}

function reduceRow(
  { path, minutes, readM, stepOf }: TimedRow,
  { rates, pumpedMin }: Timed,
  kind: PumpingTest['kind'],
  restM: Metres,
  heightM: Metres | undefined,
): TestReading {
  const recovering = kind === 'recovery';
  const rateM3d = recovering ? rates.at(-1)?.rateM3d : rateAt(rates, minutes);
  const timeRatio =
    recovering && pumpedMin !== undefined ? (pumpedMin + minutes) / minutes : undefined;
  return {
    path,
    minutes,
    drawdownM: roundDepth(readM - restM),
    ...depthOf(readM, heightM),
    ...known({ rateM3d, step: stepOf, timeRatio }),
  };
}

/**
 * A test of the record as drawdowns in order of time, by its rest level and datum. What cannot be
 * reduced is left out with the reason; what is missing is named. Never throws.
 */
export function reduceTest(record: WellRecord, model: WellModel, index: number): ReducedTest {
  const test = record.tests![index]!;
  const path = writePath(['tests', index]);
  const beforeAt = test.kind === 'recovery' ? pumpingBefore(record, index) : undefined;
  const before = beforeAt === undefined ? undefined : timePumping(record, beforeAt);
  const series = readSeries(test, index);
  const timed =
    test.kind === 'recovery' ? timeRecovery(series.rows, test, before) : timePumping(record, index);
  const rest = restOf(
    test,
    beforeAt === undefined ? undefined : record.tests![beforeAt],
    record,
    model,
  );
  const heightM = datumHeightM(test, record, model);
  const startMin = test.kind === 'recovery' ? 0 : (timed.rates[0]?.fromMin ?? 0);
  const restM = rest?.readM;
  const judged = timed.rows.map((row) => ({
    row,
    out: restM === undefined ? [] : why(row, test, restM, heightM, startMin),
  }));
  const readings =
    restM === undefined
      ? []
      : judged
          .filter(({ out }) => out.length === 0)
          .map(({ row }) => reduceRow(row, timed, test.kind, restM, heightM));
  return {
    index,
    path,
    test,
    readings,
    leftOut: [...series.leftOut, ...timed.leftOut, ...judged.flatMap(({ out }) => out)],
    rates: timed.rates,
    ...known({
      pumpedMin: timed.pumpedMin,
      restReadM: restM,
      restDepthM:
        restM === undefined || heightM === undefined ? undefined : roundDepth(restM - heightM),
    }),
    assumptions: [...(rest?.assumptions ?? []), ...timed.assumptions],
    missing: missingOf(test, timed, restM).map((what) => ({
      what,
      path: writePath(['tests', index, fieldOf[what]!]),
    })),
  };
}
