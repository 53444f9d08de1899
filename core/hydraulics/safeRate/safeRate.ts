import type { DepthM, Metres } from '../../base/units.ts';
import { roundDepth } from '../../model/range.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import { testInWell } from '../analyseTests.ts';
import type { AssumptionCode, LimitCode } from '../codes.ts';
import { assumed, check } from '../methods/said.ts';
import type {
  AnalysisChoices,
  Check,
  Estimate,
  Interval,
  MissingForTest,
  SafeRate,
  SafeRateAnswer,
  SafeRateInputs,
  Said,
} from '../results.ts';
import { screenTopM } from '../settingOf.ts';
import { allFinite } from '../sound.ts';
import { intervalLevel } from '../special/studentT.ts';
import { minutesPerDay } from '../transmissivity.ts';
import { cornersOf, drawdownAt, drawdownLaw, rateFor, type DrawdownLaw } from './drawdownLaw.ts';

const hoursPerDay = 24;
const daysOfAYear = 365;

interface Deepest {
  readonly levelM: DepthM;
  readonly setBy: LimitCode;
}

/**
 * Log cycles of minutes after which a well stands that is pumped some hours a day: the mean rate
 * through all days, and the rest of the rate through the hours of the last one.
 */
export function cyclesOf(days: number, hoursADay: number): number {
  const share = hoursADay / hoursPerDay;
  const ofDays = Math.log10(days * minutesPerDay);
  return share * ofDays + (1 - share) * Math.log10(hoursADay * 60);
}

/** Lowest level at rest: as it is given, as the record expects it, else the deepest that was read. */
function drySeason(record: WellRecord, model: WellModel, inputs: SafeRateInputs) {
  const { drySeasonLevelM, drySeasonEstimated } = inputs;
  const said = drySeasonLevelM ?? record.layingOut?.drySeasonLevel;
  const by = drySeasonEstimated ? 'drySeasonEstimated' : 'drySeasonSaid';
  if (said !== undefined) return { levelM: said, assumption: assumed(by) };
  const read = model.levels.filter(({ state }) => state === 'static').map((one) => one.depthM);
  if (read.length === 0) return undefined;
  const levelM = Math.max(...read);
  return { levelM, assumption: assumed('drySeasonFromLevels', { level: levelM }) };
}

/** Deepest pumping level that leaves the margins over screen and intake; the shallower sets it. */
function deepest(
  model: WellModel,
  intakeM: DepthM | undefined,
  { waterOverScreenM, waterOverIntakeM }: SafeRateInputs,
): Deepest | undefined {
  const screenM = screenTopM(model);
  const all: Deepest[] = [
    ...(screenM === undefined
      ? []
      : [{ levelM: screenM - waterOverScreenM, setBy: 'screen' as const }]),
    ...(intakeM === undefined
      ? []
      : [{ levelM: intakeM - waterOverIntakeM, setBy: 'intake' as const }]),
  ];
  return all.length === 0
    ? undefined
    : all.reduce((shallow, one) => (one.levelM < shallow.levelM ? one : shallow));
}

/** Highest rate of all tests that water was pumped in, m³/h. */
function testedM3h(record: WellRecord, model: WellModel): number {
  const rates = (record.tests ?? []).flatMap(({ kind }, index) =>
    kind === 'recovery' ? [] : testInWell(record, model, index, {}).reduced.rates,
  );
  return Math.max(0, ...rates.map(({ rateM3d }) => rateM3d)) / hoursPerDay;
}

/** The ends of what the corners of a law give; the upper is absent where nothing bounds it. */
function spanOf(values: readonly number[]): Interval {
  const highest = Math.max(...values);
  return {
    lowest: Math.min(...values),
    ...(Number.isFinite(highest) ? { highest } : {}),
    level: intervalLevel,
    basis: 'worstCase',
  };
}

function estimate(id: Estimate['id'], unit: string, [value, ...ends]: readonly number[]): Estimate {
  const interval = spanOf(ends);
  // Where a limit holds all of them, the ends say nothing.
  if (interval.lowest === interval.highest) return { id, value: value!, unit };
  return { id, value: value!, unit, interval };
}

function atRate(law: DrawdownLaw, rateM3h: number, dryM: DepthM, overIntakeM: Metres) {
  const drawdowns = cornersOf(law).map((corner) => drawdownAt(law, corner, rateM3h * hoursPerDay));
  const below = (M: number) => drawdowns.map((one) => one + M);
  return {
    rateM3h,
    drawdown: estimate('drawdown', 'm', drawdowns),
    pumpingLevel: estimate('pumpingLevel', 'm', below(dryM)),
    intake: estimate('intake', 'm', below(dryM + overIntakeM)),
  };
}

function assumptionsOf(
  law: DrawdownLaw,
  dry: Said<AssumptionCode>,
  { setBy }: Deepest,
  { waterOverScreenM, waterOverIntakeM, days, hoursADay }: SafeRateInputs,
): Said<AssumptionCode>[] {
  return [
    dry,
    assumed('pumpedSoLong', { days: days ?? daysOfAYear, hours: hoursADay ?? hoursPerDay }),
    assumed('noRecharge'),
    assumed('noBoundary'),
    assumed('slopesOfAllMethods'),
    ...(setBy === 'screen' ? [assumed('marginOverScreen', { margin: waterOverScreenM })] : []),
    assumed('marginOverIntake', { margin: waterOverIntakeM }),
    assumed('idealAquifer'),
    assumed('independentResiduals'),
    ...law.assumptions,
  ];
}

function checksOf(
  value: Pick<SafeRate, 'availableM' | 'byDrawdown' | 'testedM3h' | 'safe' | 'atRate'>,
  intakeM: DepthM | undefined,
  { askedM3h }: SafeRateInputs,
): Check[] {
  const { availableM, byDrawdown, safe } = value;
  const least = value.atRate.intake.value;
  const tested = value.testedM3h;
  return [
    check('waterAvailable', availableM > 0, { available: availableM }),
    check('withinTested', byDrawdown.value <= tested, { tested, rate: byDrawdown.value }),
    ...(askedM3h === undefined
      ? []
      : [check('askedWithinSafe', askedM3h <= safe.value, { asked: askedM3h, safe: safe.value })]),
    ...(intakeM === undefined
      ? []
      : [check('intakeDeepEnough', intakeM >= least, { intake: intakeM, least })]),
  ];
}

interface Known {
  readonly law: DrawdownLaw;
  readonly dry: NonNullable<ReturnType<typeof drySeason>>;
  readonly limit: Deepest;
  readonly testedM3h: number;
  readonly intakeM: DepthM | undefined;
}

function reckon(known: Known, inputs: SafeRateInputs): SafeRate {
  const { law, dry, limit, intakeM, testedM3h: tested } = known;
  const availableM = roundDepth(limit.levelM - dry.levelM);
  const rates = cornersOf(law).map((one) => rateFor(law, one, availableM) / hoursPerDay);
  const value = {
    drySeasonLevelM: dry.levelM,
    deepestLevelM: limit.levelM,
    setBy: limit.setBy,
    availableM,
    byDrawdown: estimate('rateByDrawdown', 'm³/h', rates),
    testedM3h: tested,
    safe: estimate(
      'safeRate',
      'm³/h',
      rates.map((rate) => Math.min(rate, tested)),
    ),
  };
  const rateM3h = inputs.askedM3h ?? value.safe.value;
  const whole = { ...value, atRate: atRate(law, rateM3h, dry.levelM, inputs.waterOverIntakeM) };
  return {
    ...whole,
    checks: [...checksOf(whole, intakeM, inputs), ...law.checks],
    assumptions: assumptionsOf(law, dry.assumption, limit, inputs),
    sources: law.sources,
  };
}

/**
 * What the well can give in the dry season after a year of pumping, and how deep the intake has to
 * hang: dry-season level, drawdown drawn out along the straight line to the end of the time, and
 * the well loss at the rate. The interval takes both ends of what the readings leave open; it
 * cannot hold a boundary or a drought that the test did not see. Never throws; what is missing is
 * named.
 */
export function safeRate(
  record: WellRecord,
  model: WellModel,
  inputs: SafeRateInputs,
  choices: AnalysisChoices = {},
): SafeRateAnswer {
  const cycles = cyclesOf(inputs.days ?? daysOfAYear, inputs.hoursADay ?? hoursPerDay);
  const intakeM = inputs.intakeM ?? record.pump?.intake;
  const law = drawdownLaw(record, model, cycles, choices);
  const dry = drySeason(record, model, inputs);
  const limit = deepest(model, intakeM, inputs);
  const value =
    law && dry && limit
      ? reckon({ law, dry, limit, intakeM, testedM3h: testedM3h(record, model) }, inputs)
      : undefined;
  if (value && allFinite(value)) return { known: true, value };
  const missing: MissingForTest[] = [
    ...(law && !value ? [] : [{ what: 'pumpingTest' as const, path: 'tests' }]),
    ...(dry ? [] : [{ what: 'drySeasonLevel' as const, path: 'layingOut.drySeasonLevel' }]),
    ...(limit ? [] : [{ what: 'screenOrIntake' as const, path: 'strings' }]),
  ];
  return { known: false, missing };
}
