import { known } from '../base/known.ts';
import type { WellModel } from '../model/wellModel.ts';
import type { WellRecord } from '../record/schema.ts';
import { bourdetDerivative } from './derivative.ts';
import { hintsOf } from './hints.ts';
import { limits } from './limits.ts';
import { edenHazel, fitSteps } from './methods/edenHazel.ts';
import { hantushBierschenk, stepEnds } from './methods/hantushBierschenk.ts';
import { logan, specificCapacity } from './methods/onePoint.ts';
import { cooperJacob, pumpingAxis, recoveryAxis, theisRecovery } from './methods/straightLine.ts';
import { theis } from './methods/theis.ts';
import { oncePerState } from './oncePerState.ts';
import { reduceTest, type ReducedTest } from './reduce/reduceTest.ts';
import type {
  AnalysisChoices,
  M2PerDay,
  MethodResult,
  MissingForTest,
  TestAnalysis,
} from './results.ts';
import type { Setting } from './setting.ts';
import { settingOf } from './settingOf.ts';
import { soundResults } from './sound.ts';
import { casingStorageMinutes } from './transmissivity.ts';

/** The transmissivity of a result; undefined where it has none. */
export function transmissivityOf(result: MethodResult | undefined): M2PerDay | undefined {
  return result?.estimates.find(({ id }) => id === 'transmissivity')?.value;
}

function ofConstantRate(reduced: ReducedTest, setting: Setting): MethodResult[] {
  const { readings, assumptions } = reduced;
  const line = cooperJacob(reduced, setting, assumptions);
  return soundResults([
    line,
    theis(reduced, setting, transmissivityOf(line), assumptions),
    logan(readings),
    specificCapacity(readings),
  ]);
}

function ofRecovery(reduced: ReducedTest, setting: Setting): MethodResult[] {
  return soundResults([theisRecovery(reduced, setting, reduced.assumptions)]);
}

function ofSteps(reduced: ReducedTest, setting: Setting): MethodResult[] {
  const { readings, assumptions } = reduced;
  const all = fitSteps(reduced, setting);
  return soundResults([
    hantushBierschenk(stepEnds(reduced, all), assumptions),
    all && edenHazel(all, setting, assumptions),
    specificCapacity(readings),
  ]);
}

const methodsOf = { constantRate: ofConstantRate, recovery: ofRecovery, step: ofSteps };

/** What a test of this kind is made for; without it something is missing. */
const mainMethod = {
  constantRate: 'cooperJacob',
  recovery: 'theisRecovery',
  step: 'hantushBierschenk',
} as const;

function missingOf({ missing, test, path }: ReducedTest, results: MethodResult[]) {
  if (missing.length > 0) return missing;
  const main = results.find(({ method }) => method === mainMethod[test.kind]);
  const few: MissingForTest = {
    what: test.kind === 'step' ? 'steps' : 'enoughReadings',
    path: `${path}.series`,
  };
  return main ? [] : [few];
}

/** Time until which the casing's water tells, by the best transmissivity of the test itself. */
function storageMin(results: readonly MethodResult[], { casingRadiusM }: Setting) {
  const T = results.filter(({ method }) => method !== 'logan').map(transmissivityOf);
  const first = T.find((one) => one !== undefined);
  if (first === undefined || casingRadiusM === undefined) return undefined;
  return casingStorageMinutes(casingRadiusM, first);
}

function analyse(reduced: ReducedTest, setting: Setting, smoothing: number): TestAnalysis {
  const { test, index, path, readings, leftOut, rates } = reduced;
  const { kind, startedAt } = test;
  const results = methodsOf[kind](reduced, setting);
  const casingStorageMin = storageMin(results, setting);
  const on = kind === 'constantRate' ? pumpingAxis(reduced) : recoveryAxis(reduced);
  const shaped = kind === 'step' || !on || on.readings.length === 0 ? undefined : on;
  return {
    index,
    path,
    kind,
    readings,
    leftOut,
    rates,
    results,
    ...known({
      startedAt,
      restReadM: reduced.restReadM,
      restDepthM: reduced.restDepthM,
      pumpedMin: reduced.pumpedMin,
      casingStorageMin,
      derivative: shaped && bourdetDerivative(shaped, smoothing),
    }),
    hints: shaped && kind === 'constantRate' ? hintsOf(shaped, casingStorageMin) : [],
    missing: missingOf(reduced, results),
  };
}

/** A test of a record with the well that it was made in. */
export function testInWell(
  record: WellRecord,
  model: WellModel,
  index: number,
  { windows }: AnalysisChoices,
): { readonly reduced: ReducedTest; readonly setting: Setting } {
  const reduced = oncePerState(record, model, `reduced ${index}`, () =>
    reduceTest(record, model, index),
  );
  return { reduced, setting: settingOf(model, reduced.restDepthM, windows?.[index]) };
}

/**
 * Every pumping test of a record, reduced to drawdowns and analysed by every method that it
 * allows, in the record's order. Never throws for field data: readings that cannot be used are
 * left out with the reason, and what is missing is named. A frozen record is analysed once.
 */
export function analyseTests(
  record: WellRecord,
  model: WellModel,
  choices: AnalysisChoices = {},
): readonly TestAnalysis[] {
  return oncePerState(record, model, `analysed ${JSON.stringify(choices)}`, () =>
    (record.tests ?? []).map((_, index) => {
      const { reduced, setting } = testInWell(record, model, index, choices);
      return analyse(reduced, setting, choices.smoothing ?? limits.smoothing);
    }),
  );
}
