import { known } from '../../base/known.ts';
import type { DepthM } from '../../base/units.ts';
import { nestStrings } from '../../model/column.ts';
import type { StringModel, WellModel } from '../../model/wellModel.ts';
import type { Practice } from '../../practice/practice.ts';
import { stageOf } from '../../practice/rules/stage.ts';
import type { WellRecord } from '../../record/schema.ts';
import { seasonLevels, type SeasonLevels } from '../levels/seasonLevels.ts';
import { pumpAssumptions, type PumpAssumptionId } from './assumptions.ts';
import type {
  PumpInputFrom,
  PumpInputId,
  PumpInputs,
  PumpMissing,
  PumpQuantity,
} from './ranking.ts';

/** A value and where it comes from. */
export interface Known {
  readonly value: number;
  readonly from: PumpInputFrom;
}

/** What every kind is judged from. What is absent is not known. */
export interface PumpBasis {
  readonly model: WellModel;
  readonly practice: Practice;
  readonly inputs: PumpInputs;
  readonly levels: SeasonLevels;
  /** The string that the pump hangs in. */
  readonly string?: StringModel;
  /** No casing is told, and the well is not completed without: there will be some. */
  readonly casingUntold: boolean;
  readonly footM?: DepthM;
  readonly safeRate?: Known;
  readonly users?: Known;
  readonly ph?: Known;
  /** Height of the sea's air: ground above the elevation's datum, metres. */
  readonly elevationM?: number;
  readonly lift?: PumpQuantity;
  readonly need?: PumpQuantity;
  /** What lacks of levels, for any pump. */
  readonly missingLevels: readonly PumpMissing[];
}

type Assumable = Extract<PumpInputId, PumpAssumptionId>;

/** An input as it is given, else as it is assumed. */
export function givenOrAssumed(inputs: PumpInputs, id: Assumable): Known {
  const value = inputs[id];
  return value === undefined
    ? { value: pumpAssumptions[id].value, from: { assumed: id } }
    : { value, from: { given: id } };
}

function given(inputs: PumpInputs, id: PumpInputId): Known | undefined {
  const value = inputs[id];
  return typeof value === 'number' ? { value, from: { given: id } } : undefined;
}

/** The last constant rate that the well was pumped at in a test. */
function testedRate({ tests = [] }: WellRecord): Known | undefined {
  const at = tests.findLastIndex(({ kind, rate = 0 }) => kind === 'constantRate' && rate > 0);
  const value = tests[at]?.rate;
  return value === undefined ? undefined : { value, from: { path: `tests[${at}].rate` } };
}

function usersOf({ site }: WellRecord): Known | undefined {
  const value = site?.users;
  return !value ? undefined : { value, from: { path: 'site.users' } };
}

const leastPh = 0;
const mostPh = 14;

/** The pH of the last sample that has one; of samples without a day, the last in the list. */
function phOf({ quality = [] }: WellRecord): Known | undefined {
  const found = quality.flatMap(({ takenAt, results = [] }, sample) =>
    results.flatMap(({ parameter, value }, at) =>
      /^ph$/i.test(parameter.trim()) && value !== undefined && value > leastPh && value <= mostPh
        ? [{ value, at: takenAt ?? '', path: `quality[${sample}].results[${at}].value` }]
        : [],
    ),
  );
  const last = found.reduce<(typeof found)[number] | undefined>(
    (latest, one) => (latest && latest.at > one.at ? latest : one),
    undefined,
  );
  return last && { value: last.value, from: { path: last.path } };
}

function isClosed({ capPath, pieces }: StringModel): boolean {
  return capPath !== undefined || pieces.at(-1)?.kind === 'sump';
}

/** Where the well ends for a pump: the closed foot of the innermost string, else the hole's. */
function footOf({ bore }: WellModel, string: StringModel | undefined): DepthM | undefined {
  return string && isClosed(string) ? string.bottomM : (bore.foundM ?? bore.depthM);
}

function missingLevels(levels: SeasonLevels): PumpMissing[] {
  const missing: PumpMissing[] = [];
  if (levels.restM === undefined && levels.dryRestM === undefined)
    missing.push({ what: 'restLevel', path: 'levels' });
  else if (levels.dryRestM === undefined)
    missing.push({ what: 'dryLevel', path: 'layingOut.drySeasonLevel', given: 'seasonalSwingM' });
  if (levels.drawdownM === undefined)
    missing.push({ what: 'drawdown', path: 'layingOut.drawdown', given: 'drawdownM' });
  return missing;
}

/** What the record, the model and the inputs tell for a choice of pump. */
export function readBasis(
  record: WellRecord,
  model: WellModel,
  practice: Practice,
  inputs: PumpInputs,
): Omit<PumpBasis, 'lift' | 'need'> {
  const { seasonalSwingM, lowMonths, drawdownM } = inputs;
  const season =
    seasonalSwingM === undefined ? undefined : { swingM: seasonalSwingM, ...known({ lowMonths }) };
  const levels = seasonLevels(record, model, known({ season, drawdownM }));
  const string = nestStrings(model.strings).at(-1);
  return {
    model,
    practice,
    inputs,
    levels,
    missingLevels: missingLevels(levels),
    casingUntold: string === undefined && stageOf(record) !== 'serves',
    ...known({
      string,
      footM: footOf(model, string),
      safeRate: given(inputs, 'safeRateM3h') ?? testedRate(record),
      users: given(inputs, 'users') ?? usersOf(record),
      ph: given(inputs, 'ph') ?? phOf(record),
      elevationM: record.site?.elevation,
    }),
  };
}
