import { known } from '../../base/known.ts';
import type { DepthM, Metres } from '../../base/units.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { Practice } from '../practice.ts';
import { designRateM3h, dryLevelM } from './water.ts';

/** What a safe rate is reckoned from besides the tests: margins of the practice, asks of the record. */
export interface SafeRateReading {
  readonly waterOverIntakeM: Metres;
  readonly waterOverScreenM: Metres;
  readonly askedM3h?: number;
  readonly drySeasonLevelM?: DepthM;
  readonly drySeasonEstimated?: boolean;
  readonly intakeM?: DepthM;
}

export function safeRateInputs(
  record: WellRecord,
  model: WellModel,
  { figures }: Practice,
): SafeRateReading {
  const drySeasonLevelM = dryLevelM(record, model);
  const said = record.layingOut?.drySeasonLevel;
  const isEstimated = drySeasonLevelM !== undefined && said === undefined;
  return {
    waterOverIntakeM: figures.intakeUnderPumpingLevelM.value,
    waterOverScreenM: figures.screenUnderPumpingLevelM.value,
    ...known({
      askedM3h: designRateM3h(record),
      drySeasonLevelM,
      drySeasonEstimated: isEstimated ? true : undefined,
      intakeM: record.pump?.intake,
    }),
  };
}
