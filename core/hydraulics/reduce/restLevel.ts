import type { DepthM, Metres } from '../../base/units.ts';
import { casingTop, latestRest } from '../../model/levels.ts';
import { roundDepth } from '../../model/range.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { PumpingTest } from '../../record/water.ts';
import type { AssumptionCode } from '../codes.ts';
import type { Said } from '../results.ts';

/** The rest level by the tape's own datum, and what had to be taken for it. */
export interface Rest {
  readonly readM: Metres;
  readonly assumptions: readonly Said<AssumptionCode>[];
}

/** What a reading of a test has to be lessened by to be a depth below ground. */
export function datumHeightM(
  { datum }: PumpingTest,
  record: WellRecord,
  model: WellModel,
): Metres | undefined {
  if (datum === 'ground') return 0;
  return datum === 'casingTop' ? casingTop(record, model.strings)?.stickUpM : undefined;
}

/** Levels that were read no later than a test began; all where either has no moment. */
function levelsBefore({ startedAt }: PumpingTest, { levels }: WellModel) {
  const began = startedAt === undefined ? Infinity : Date.parse(startedAt);
  return levels.filter(({ at }) => at === undefined || !(Date.parse(at) > began));
}

function fromLevels(test: PumpingTest, record: WellRecord, model: WellModel): Rest | undefined {
  const level = latestRest(levelsBefore(test, model));
  const heightM = datumHeightM(test, record, model);
  if (!level) return undefined;
  const assumptions = [{ code: 'restFromLevels', values: { level: level.depthM } }] as const;
  if (level.datum === test.datum) return { readM: level.readM, assumptions };
  return heightM === undefined ? undefined : { readM: level.depthM + heightM, assumptions };
}

function fromSeries({ kind, series = [] }: PumpingTest): Rest | undefined {
  const first = series.find(({ minutes }) => minutes === 0);
  if (kind === 'recovery' || !first) return undefined;
  return { readM: first.reading, assumptions: [{ code: 'restFromSeries', values: {} }] };
}

/**
 * Rest level of a test: as it says itself, else its reading at 0 min, else that of the pumping
 * before a recovery, else the last level at rest before the test.
 */
export function restOf(
  test: PumpingTest,
  before: PumpingTest | undefined,
  record: WellRecord,
  model: WellModel,
): Rest | undefined {
  if (test.restLevel !== undefined) return { readM: test.restLevel, assumptions: [] };
  const own = fromSeries(test);
  if (own) return own;
  if (before?.restLevel !== undefined && before.datum === test.datum)
    return {
      readM: before.restLevel,
      assumptions: [{ code: 'restFromPumpingTest', values: {} }],
    };
  return fromLevels(test, record, model);
}

/** A reading as depth below ground. */
export function depthOf(readM: Metres, heightM: Metres | undefined): { depthM: DepthM } | object {
  return heightM === undefined ? {} : { depthM: roundDepth(readM - heightM) };
}
