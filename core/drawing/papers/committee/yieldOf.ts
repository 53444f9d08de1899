import type { RecordPath } from '../../../base/recordPath.ts';
import { chosenWindows } from '../../../hydraulics/chosenWindows.ts';
import { safeRate } from '../../../hydraulics/safeRate/safeRate.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { Practice } from '../../../practice/practice.ts';
import { safeRateInputs } from '../../../practice/reading/safeRateInputs.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { YieldBasis } from './words.ts';

/** What is carried home on a head: 20 litres (Sphere: containers of 10 to 20 litres). */
export const bucketLitres = 20;
const litresPerM3 = 1000;

export interface Yield {
  /** Whole buckets, so that no more is promised than was found. */
  readonly bucketsAnHour: number;
  readonly basis: YieldBasis;
  readonly source: RecordPath;
}

function told(basis: YieldBasis, m3h: number, source: RecordPath): Yield {
  // A little over, so that 0.9 m³/h are 45 buckets whatever doubles make of it.
  const buckets = Math.floor((m3h * litresPerM3) / bucketLitres + 1e-6);
  return { bucketsAnHour: buckets, basis, source };
}

function safeRateM3h(record: WellRecord, model: WellModel, practice: Practice): number | undefined {
  const inputs = safeRateInputs(record, model, practice);
  const answer = safeRate(record, model, inputs, { windows: chosenWindows(record) });
  return answer.known && answer.value.safe.value > 0 ? answer.value.safe.value : undefined;
}

/** The last constant rate of the tests. */
function testedM3h({ tests = [] }: WellRecord): number | undefined {
  return tests.flatMap(({ kind, rate }) => (kind === 'constantRate' ? (rate ?? []) : [])).at(-1);
}

/**
 * What the well gives. The pump in use tells it where the well can give as much; else the safe rate
 * of the tests, as the most that may be drawn; else the rate of the last test; else the rate that
 * the well was laid out for.
 */
export function yieldOf(
  record: WellRecord,
  model: WellModel,
  practice: Practice,
): Yield | undefined {
  const safe = safeRateM3h(record, model, practice);
  const inUse = record.pump?.rate;
  if (inUse !== undefined && (safe === undefined || inUse <= safe))
    return told('pump', inUse, 'pump.rate');
  if (safe !== undefined) return told('safe', safe, 'tests');
  const tested = testedM3h(record);
  if (tested !== undefined) return told('tested', tested, 'tests');
  const planned = record.layingOut?.rate;
  return planned === undefined ? undefined : told('planned', planned, 'layingOut.rate');
}
