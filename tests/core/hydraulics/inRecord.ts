import { analyseTests } from '../../../core/hydraulics/analyseTests.ts';
import { reduceTest } from '../../../core/hydraulics/reduce/reduceTest.ts';
import type { AnalysisChoices, TestAnalysis } from '../../../core/hydraulics/results.ts';
import type { MethodId } from '../../../core/hydraulics/codes.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { PumpingTest } from '../../../core/record/water.ts';
import { record } from '../model/well.ts';

/** A record of pumping tests with the chapters that a case needs beside them. */
export function tested(tests: PumpingTest[], beside: Partial<WellRecord> = {}): WellRecord {
  return record({ ...beside, tests });
}

export function analyse(well: WellRecord, choices: AnalysisChoices = {}): readonly TestAnalysis[] {
  return analyseTests(well, resolveWell(well), choices);
}

/** The one test of a record of one. */
export function analyseOne(test: PumpingTest, beside: Partial<WellRecord> = {}): TestAnalysis {
  return analyse(tested([test], beside))[0]!;
}

export function reduceOne(test: PumpingTest, beside: Partial<WellRecord> = {}) {
  const well = tested([test], beside);
  return reduceTest(well, resolveWell(well), 0);
}

export function byMethod({ results }: TestAnalysis, method: MethodId) {
  return results.find((result) => result.method === method);
}

/** A series of minutes and readings against a rest level of nil. */
export function series(pairs: readonly (readonly [number, number])[]) {
  return pairs.map(([minutes, reading]) => ({ minutes, reading }));
}
