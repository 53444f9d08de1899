import { latestRest } from '../../model/levels.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { DepthM } from '../../base/units.ts';
import type { WellRecord } from '../../record/schema.ts';

/** Rest level that was read last, metres below ground. */
export function restLevelM({ levels }: WellModel): DepthM | undefined {
  return latestRest(levels)?.depthM;
}

/** Rest level to be expected in the dry season, where somebody said it. */
export function dryLevelM({ layingOut }: WellRecord): DepthM | undefined {
  return layingOut?.drySeasonLevel;
}

/** The lowest rest level known: that of the dry season where it was said, else the last read. */
export function lowestRestM(record: WellRecord, model: WellModel): DepthM | undefined {
  return dryLevelM(record) ?? restLevelM(model);
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
