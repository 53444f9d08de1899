import { known } from '../../base/known.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { GuidelineSet } from '../../water/guidelines/guidelineSet.ts';
import { judgeQuality } from '../../water/quality/judgeQuality.ts';
import type { Comparison, ParameterResult } from '../../water/results.ts';
import { conversion } from '../../water/units/convert.ts';
import type { BinderLimit, BinderQuality, BinderResult } from './binderWell.ts';

function limitOf(of: ParameterResult, { value: held, state }: Comparison): BinderLimit {
  const way = conversion(of.parameter, held, of);
  const { key, bound, basis } = held;
  const value = way.ok ? held.value * way.factor : undefined;
  return { key, bound, basis, state, ...known({ value }) };
}

/** Values on a condition hold for some waters only: they stand on the well's own paper. */
function resultOf(result: ParameterResult): BinderResult[] {
  const { parameter, name, unit, as, last, comparisons } = result;
  if (!last) return [];
  const limits = comparisons
    .filter(({ value }) => value.when === undefined)
    .map((one) => limitOf(result, one));
  const { below, value } = last;
  return [{ parameter, name, unit, below, limits, ...known({ as, value }) }];
}

/** The last result of each parameter beside its guideline values; undefined without any sample. */
export function binderQualityOf(
  record: WellRecord,
  guidelines: GuidelineSet,
): BinderQuality | undefined {
  if (!record.quality?.length) return undefined;
  const { set, samples, parameters } = judgeQuality(record, guidelines);
  return { set, samples, results: parameters.flatMap(resultOf) };
}
