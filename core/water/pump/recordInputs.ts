import { known } from '../../base/known.ts';
import type { RecordPath } from '../../base/recordPath.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { PumpInputId, PumpInputs } from './ranking.ts';

/** Fields of the record in which inputs are written. */
export const inputPaths: Readonly<Partial<Record<PumpInputId, RecordPath>>> = {
  safeRateM3h: 'tests',
  drawdownM: 'layingOut.drawdown',
  users: 'site.users',
  litresPerPersonDay: 'site.litresPerPersonDay',
  repair: 'site.repair',
  mains: 'site.mains',
  sunHours: 'site.sunHours',
  outletM: 'pump.outletHeight',
  deliveryM: 'pump.deliveryLength',
};

/** What told the rate of the well: its tests, or a rate that nobody tested it for. */
export type RateBy = 'analysed' | 'tested' | 'laidOut' | 'pumpInUse';

export interface RecordInputs {
  readonly inputs: PumpInputs;
  readonly rateBy?: RateBy;
}

interface Rate {
  readonly by: RateBy;
  /** Absent where the record's own test is to be read. */
  readonly safeRateM3h?: number;
}

function rateOf(
  { tests = [], layingOut, pump }: WellRecord,
  analysedM3h?: number,
): Rate | undefined {
  if (analysedM3h !== undefined) return { by: 'analysed', safeRateM3h: analysedM3h };
  if (tests.some(({ kind, rate }) => kind === 'constantRate' && rate !== undefined))
    return { by: 'tested' };
  if (layingOut?.rate !== undefined) return { by: 'laidOut', safeRateM3h: layingOut.rate };
  return pump?.rate === undefined ? undefined : { by: 'pumpInUse', safeRateM3h: pump.rate };
}

/**
 * What the record tells for a choice of pump besides levels and the well itself. The rate, m³/h, is
 * the safe one by analysed tests where there is one; else that of the last constant-rate test; else
 * the one that was laid out for, or the pump's in use, which no test stands behind.
 */
export function recordInputs(record: WellRecord, analysedM3h?: number): RecordInputs {
  const { site, pump } = record;
  const rate = rateOf(record, analysedM3h);
  return {
    inputs: known({
      safeRateM3h: rate?.safeRateM3h,
      litresPerPersonDay: site?.litresPerPersonDay,
      repair: site?.repair,
      mains: site?.mains,
      sunHours: site?.sunHours,
      outletM: pump?.outletHeight,
      deliveryM: pump?.deliveryLength,
    }),
    ...known({ rateBy: rate?.by }),
  };
}
