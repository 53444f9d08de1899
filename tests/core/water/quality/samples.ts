import type { WaterSample } from '../../../../core/record/quality.ts';
import { guidelinesOf } from '../../../../core/water/guidelines/chooseGuidelines.ts';
import type { GuidelineSet } from '../../../../core/water/guidelines/guidelineSet.ts';
import { judgeQuality } from '../../../../core/water/quality/judgeQuality.ts';
import type { ParameterResult, QualityResult } from '../../../../core/water/results.ts';

export type Row = NonNullable<WaterSample['results']>[number];

export const who = guidelinesOf('who2022');

/** A sample of one day with its results. */
export function sample(takenAt: string | undefined, ...results: Row[]): WaterSample {
  return takenAt === undefined ? { results } : { takenAt, results };
}

export function judge(quality: WaterSample[], set: GuidelineSet = who): QualityResult {
  return judgeQuality({ schemaVersion: 1, quality }, set);
}

export function resultOf(result: QualityResult, parameter: string): ParameterResult {
  return result.parameters.find((one) => one.parameter === parameter)!;
}

/** One result, judged alone. */
export function judgeOne(row: Row, parameter: string, set?: GuidelineSet): ParameterResult {
  return resultOf(judge([sample('2026-02-10', row)], set), parameter);
}
