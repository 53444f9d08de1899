import { known } from '../../base/known.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { Basis, GuidelineSet, HeldParameter } from '../guidelines/guidelineSet.ts';
import type {
  Comparison,
  ParameterResult,
  QualityResult,
  Reading,
  ValueState,
} from '../results.ts';
import { bandOf } from './bands.ts';
import { compare, worstOf, worstReading } from './compare.ts';
import { hardnessOf } from './hardness.ts';
import { ionBalance } from './ionBalance.ts';
import { nitrogenRatio } from './nitrogen.ts';
import { notesOf } from './notes.ts';
import { lastFirst } from './ofSample.ts';
import { inOrder, readSamples, type ReadParameter } from './readReadings.ts';
import { solidsOf } from './solids.ts';
import { trendOf } from './trend.ts';

const healthBases: readonly Basis[] = ['health', 'provisional'];

/** The worst state of the values that rest on health, or of all others; those on a condition apart. */
function worstBy(comparisons: readonly Comparison[], health: boolean): ValueState | undefined {
  return worstOf(
    comparisons
      .filter(({ value }) => value.when === undefined)
      .filter(({ value }) => healthBases.includes(value.basis) === health)
      .map(({ state }) => state),
  );
}

/** Readings of the last sample: of those with a day, the latest, else the last in the record. */
function ofLastSample(ordered: readonly Reading[]): Reading[] {
  const last = ordered.at(-1);
  return ordered.filter(({ sample }) => sample === last?.sample);
}

function resultOf(
  parameter: HeldParameter,
  read: readonly ReadParameter[],
  missing: boolean,
): ParameterResult {
  const own = read.filter((one) => one.parameter.id === parameter.id);
  const readings = inOrder(own.map(({ reading }) => reading));
  const last = worstReading(parameter, ofLastSample(readings));
  const comparisons = compare(parameter, last);
  return {
    parameter: parameter.id,
    name: parameter.names,
    unit: parameter.unit,
    ...known({ as: parameter.as, last }),
    readings,
    comparisons,
    ...known({
      health: worstBy(comparisons, true),
      use: worstBy(comparisons, false),
      band: last && bandOf(parameter, last),
      trend: trendOf(parameter, readings),
    }),
    missingBeforeHandover: missing,
  };
}

/** Parameters that the set asks for before handover, and that nobody looked for. */
function missingOf({ parameters }: GuidelineSet, read: readonly ReadParameter[]): string[] {
  const tested = new Set(read.map(({ parameter }) => parameter.id));
  return parameters
    .filter(({ id, beforeHandover }) => {
      if (!beforeHandover) return false;
      return ![id, ...beforeHandover.instead].some((one) => tested.has(one));
    })
    .map(({ id }) => id);
}

type Samples = NonNullable<WellRecord['quality']>;

function judge(quality: Samples, set: GuidelineSet): QualityResult {
  const { read, unknown } = readSamples(quality, set);
  const missing = missingOf(set, read);
  const samples = lastFirst(read);
  const parameterOf = (id: string) => set.parameters.find((one) => one.id === id);
  const formIn = (id: string) => parameterOf(id)?.as;
  return {
    set: { id: set.id, version: set.version, name: set.name },
    samples: quality.length,
    parameters: set.parameters.map((one) => resultOf(one, read, missing.includes(one.id))),
    unknown,
    ...known({
      nitrogen: nitrogenRatio(samples, set),
      ionBalance: ionBalance(samples, formIn),
      hardness: hardnessOf(samples, formIn),
      solids: solidsOf(samples, parameterOf),
    }),
    missingBeforeHandover: missing,
    notes: notesOf(quality, read),
  };
}

/** Results by the set and by the samples, gone with either. */
const judged = new WeakMap<GuidelineSet, WeakMap<Samples, QualityResult>>();

/**
 * The water samples of a record beside a set of guideline values. Each parameter is compared by
 * the last sample in which it was looked for. It says what was found; whether the water may be
 * drunk is for the health authority to say. Frozen samples are judged once by a set.
 */
export function judgeQuality({ quality = [] }: WellRecord, set: GuidelineSet): QualityResult {
  if (!Object.isFrozen(quality)) return judge(quality, set);
  const bySamples = judged.get(set) ?? new WeakMap<Samples, QualityResult>();
  judged.set(set, bySamples);
  const result = bySamples.get(quality) ?? judge(quality, set);
  bySamples.set(quality, result);
  return result;
}
