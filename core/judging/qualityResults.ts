import type { RecordPath } from '../base/recordPath.ts';
import type { HealthReading, WaterResults } from '../practice/rules/results.ts';
import type { WellRecord } from '../record/schema.ts';
import type { Basis, GuidelineSet } from '../water/guidelines/guidelineSet.ts';
import { judgeQuality } from '../water/quality/judgeQuality.ts';
import type { Comparison, ParameterResult, ValueState } from '../water/results.ts';
import { conversion } from '../water/units/convert.ts';

const healthBases: readonly Basis[] = ['health', 'provisional'];
const past: readonly ValueState[] = ['above', 'below'];
const untold: readonly ValueState[] = ['limitTooHigh', 'formUnknown', 'unitUnknown'];

function isPastHealth({ value, state }: Comparison): boolean {
  return value.when === undefined && healthBases.includes(value.basis) && past.includes(state);
}

/** The last reading beside the first health value that it is past, both in the parameter's unit. */
function healthReading(result: ParameterResult): HealthReading[] {
  const { parameter, unit, last, comparisons } = result;
  const found = comparisons.find(isPastHealth);
  if (!last || !found) return [];
  const way = conversion(parameter, found.value, result);
  const value = last.value ?? Math.min(...last.possible);
  if (!way.ok || !Number.isFinite(value)) return [];
  const limit = found.value.value * way.factor;
  return [{ path: `${last.path}.value`, parameter, value, limit, unit }];
}

function unclearReading({ health, last }: ParameterResult): RecordPath[] {
  return last && health !== undefined && untold.includes(health) ? [last.path] : [];
}

/** What rules ask of water samples, beside a set of guideline values. */
export function qualityResults(
  quality: WellRecord['quality'] = [],
  guidelines: GuidelineSet,
): Omit<WaterResults, 'pump'> {
  const { parameters, missingBeforeHandover } = judgeQuality(
    { schemaVersion: 1, quality },
    guidelines,
  );
  const path = quality.length === 0 ? 'quality' : `quality[${quality.length - 1}].results`;
  return {
    aboveHealth: parameters.flatMap(healthReading),
    unclear: parameters.flatMap(unclearReading),
    missingTests: missingBeforeHandover.map((parameter) => ({ parameter, path })),
  };
}
