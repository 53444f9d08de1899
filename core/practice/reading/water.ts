import { known } from '../../base/known.ts';
import { latestRest } from '../../model/levels.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { DepthM } from '../../base/units.ts';
import type { WellRecord } from '../../record/schema.ts';
import { dryEstimate, type SeasonInputs } from './season/dryEstimate.ts';

/** Rest level that was read last, metres below ground. */
export function restLevelM({ levels }: WellModel): DepthM | undefined {
  return latestRest(levels)?.depthM;
}

/** The swing of the year as the record tells it; undefined where it does not. */
export function seasonOf({ layingOut }: WellRecord): SeasonInputs | undefined {
  const { seasonalSwing: swingM, lowMonths } = layingOut ?? {};
  return swingM === undefined ? undefined : { swingM, ...known({ lowMonths }) };
}

/**
 * Rest level to be expected in the dry season: as somebody said it, else estimated from the rest
 * level that was read last and the swing of the year.
 */
export function dryLevelM(record: WellRecord, { levels }: WellModel): DepthM | undefined {
  const said = record.layingOut?.drySeasonLevel;
  const [rest, season] = [latestRest(levels), seasonOf(record)];
  if (said !== undefined || !rest || !season) return said;
  return dryEstimate(rest.depthM, rest.at, season).levelM;
}

/** The lowest rest level known: that of the dry season where it is told, else the last read. */
export function lowestRestM(record: WellRecord, model: WellModel): DepthM | undefined {
  return dryLevelM(record, model) ?? restLevelM(model);
}

/**
 * Water level while pumping: the dry season's level less the drawdown that is expected, and the
 * deepest that was read, whichever lies deeper.
 */
export function pumpingLevelM(record: WellRecord, model: WellModel): DepthM | undefined {
  const { drawdown } = record.layingOut ?? {};
  const rest = lowestRestM(record, model);
  const expected = drawdown === undefined || rest === undefined ? [] : [rest + drawdown];
  const read = model.levels.filter(({ state }) => state === 'pumping').map(({ depthM }) => depthM);
  const all = [...expected, ...read];
  return all.length === 0 ? undefined : Math.max(...all);
}

/** The rate that the well is to give, cubic metres an hour: as laid out, else as the pump gives. */
export function designRateM3h({ layingOut, pump }: WellRecord): number | undefined {
  return layingOut?.rate ?? pump?.rate;
}
