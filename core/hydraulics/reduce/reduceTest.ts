import { known } from '../../base/known.ts';
import { writePath, type RecordPath } from '../../base/recordPath.ts';
import type { DepthM, Metres } from '../../base/units.ts';
import { roundDepth } from '../../model/range.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { PumpingTest } from '../../record/water.ts';
import type { AssumptionCode, MissingCode } from '../codes.ts';
import { rateAt } from '../ratesOverTime.ts';
import type { LeftOut, MissingForTest, Said, TestReading } from '../results.ts';
import type { Drawdowns } from '../setting.ts';
import { datumHeightM, depthOf, restOf, type Rest } from './restLevel.ts';
import { pumpingBefore, timeTest, type Timed, type TimedRow } from './timing.ts';

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

/** What the test lacks, by the names of its fields. */
function missingOf(
  { kind, series = [] }: PumpingTest,
  { rates, pumpedMin }: Timed,
  rest: Rest | undefined,
): MissingCode[] {
  const lacking: readonly (readonly [MissingCode, boolean])[] = [
    ['series', series.length === 0],
    ['restLevel', rest === undefined],
    ['rate', rates.length === 0],
    ['minutesPumped', kind === 'recovery' && pumpedMin === undefined],
  ];
  return lacking.filter(([, lacks]) => lacks).map(([what]) => what);
}

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

/** The rows of a test as drawdowns; none where no rest level is known. */
function reduceRows(
  timed: Timed,
  test: PumpingTest,
  rest: Rest | undefined,
  heightM: Metres | undefined,
): Pick<Drawdowns, 'readings' | 'leftOut'> {
  if (!rest) return { readings: [], leftOut: timed.leftOut };
  const { kind } = test;
  const startMin = kind === 'recovery' ? 0 : (timed.rates[0]?.fromMin ?? 0);
  const judged = timed.rows.map((row) => ({
    row,
    out: why(row, test, rest.readM, heightM, startMin),
  }));
  return {
    readings: judged
      .filter(({ out }) => out.length === 0)
      .map(({ row }) => reduceRow(row, timed, kind, rest.readM, heightM)),
    leftOut: [...timed.leftOut, ...judged.flatMap(({ out }) => out)],
  };
}

/**
 * A test of the record as drawdowns in order of time, by its rest level and datum. What cannot be
 * reduced is left out with the reason; what is missing is named. Never throws.
 */
export function reduceTest(record: WellRecord, model: WellModel, index: number): ReducedTest {
  const test = record.tests![index]!;
  const beforeAt = test.kind === 'recovery' ? pumpingBefore(record, index) : undefined;
  const timed = timeTest(record, index, beforeAt);
  const before = beforeAt === undefined ? undefined : record.tests![beforeAt];
  const rest = restOf(test, before, record, model);
  const heightM = datumHeightM(test, record, model);
  const restDepthM = rest && heightM !== undefined ? roundDepth(rest.readM - heightM) : undefined;
  return {
    index,
    path: writePath(['tests', index]),
    test,
    ...reduceRows(timed, test, rest, heightM),
    rates: timed.rates,
    ...known({ pumpedMin: timed.pumpedMin, restReadM: rest?.readM, restDepthM }),
    assumptions: [...(rest?.assumptions ?? []), ...timed.assumptions],
    missing: missingOf(test, timed, rest).map((what) => ({
      what,
      path: writePath(['tests', index, what]),
    })),
  };
}
