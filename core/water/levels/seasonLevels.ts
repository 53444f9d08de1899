import { known } from '../../base/known.ts';
import type { DepthM, Metres } from '../../base/units.ts';
import { latestRest } from '../../model/levels.ts';
import type { WellModel } from '../../model/wellModel.ts';
import {
  dryEstimate,
  type DryEstimate,
  type SeasonInputs,
} from '../../practice/reading/season/dryEstimate.ts';
import { seasonOf } from '../../practice/reading/water.ts';
import type { WellRecord } from '../../record/schema.ts';

export interface LevelInputs {
  readonly season?: SeasonInputs;
  /** Takes the place of what the record tells. */
  readonly drawdownM?: Metres;
}

/** What told the dry season's level: the record, or an estimate from the swing of the year. */
export type DryBy = 'said' | 'estimated';

/** Water levels by season, metres below ground; negative where the water stands above ground. */
export interface SeasonLevels {
  /** Read last at rest. */
  readonly restM?: DepthM;
  readonly restAt?: string;
  readonly dryRestM?: DepthM;
  readonly dryBy?: DryBy;
  readonly estimate?: DryEstimate;
  readonly drawdownM?: Metres;
  /** While pumping, now and in the dry season. */
  readonly pumpingM?: DepthM;
  readonly dryPumpingM?: DepthM;
  /** The deepest level that anything tells; in the dry season the water stands no higher. */
  readonly atLeastM?: DepthM;
}

function deepest(...levels: readonly (DepthM | undefined)[]): DepthM | undefined {
  const told = levels.filter((level) => level !== undefined);
  return told.length === 0 ? undefined : Math.max(...told);
}

/**
 * Drawdown at the end of a test at a constant rate: the deepest reading less the one before pumping,
 * which are read against one datum. Of several tests, the last that tells.
 */
function testedDrawdownM({ tests = [] }: WellRecord): Metres | undefined {
  const told = tests.flatMap(({ kind, restLevel, series = [] }) => {
    if (kind !== 'constantRate' || restLevel === undefined || series.length === 0) return [];
    return [Math.max(0, ...series.map(({ reading }) => reading - restLevel))];
  });
  return told.at(-1);
}

function sum(level: DepthM | undefined, drawdown: Metres | undefined): DepthM | undefined {
  return level === undefined || drawdown === undefined ? undefined : level + drawdown;
}

/**
 * Levels now and in the dry season. The drawdown is the one given, else the record's, else that
 * of a test, else from the last rest level to the deepest level that was read while pumping. A level that was read while
 * pumping counts in both seasons, where it is deeper.
 */
export function seasonLevels(
  record: WellRecord,
  model: WellModel,
  { season = seasonOf(record), drawdownM: given }: LevelInputs = {},
): SeasonLevels {
  const rest = latestRest(model.levels);
  const restM = rest?.depthM;
  const read = model.levels.filter(({ state }) => state === 'pumping');
  const readM = deepest(...read.map(({ depthM }) => depthM));
  const seenM = restM === undefined || readM === undefined ? undefined : Math.max(0, readM - restM);
  const drawdownM = given ?? record.layingOut?.drawdown ?? testedDrawdownM(record) ?? seenM;
  const saidM = record.layingOut?.drySeasonLevel;
  const estimate =
    saidM === undefined && rest && season ? dryEstimate(rest.depthM, rest.at, season) : undefined;
  const dryRestM = saidM ?? estimate?.levelM;
  const dryBy = saidM !== undefined ? 'said' : estimate ? 'estimated' : undefined;
  const pumpingM = deepest(sum(restM, drawdownM), readM);
  const dryPumpingM =
    dryRestM === undefined || drawdownM === undefined
      ? undefined
      : deepest(dryRestM + drawdownM, pumpingM);
  return known({
    restM,
    restAt: rest?.at,
    dryRestM,
    dryBy,
    estimate,
    drawdownM,
    pumpingM,
    dryPumpingM,
    atLeastM: deepest(dryPumpingM, pumpingM, dryRestM, restM),
  });
}
