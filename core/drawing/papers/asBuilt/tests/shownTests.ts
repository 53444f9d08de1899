import { known } from '../../../../base/known.ts';
import { analyseTests } from '../../../../hydraulics/analyseTests.ts';
import { chosenWindows } from '../../../../hydraulics/chosenWindows.ts';
import { safeRate } from '../../../../hydraulics/safeRate/safeRate.ts';
import type { WellModel } from '../../../../model/wellModel.ts';
import type { Practice } from '../../../../practice/practice.ts';
import { safeRateInputs } from '../../../../practice/reading/safeRateInputs.ts';
import type { WellRecord } from '../../../../record/schema.ts';
import type { ShownTests } from './testKit.ts';

/** The tests of a record as analysed; a safe rate needs the margins of a practice. */
export function shownTests(
  record: WellRecord,
  model: WellModel,
  practice: Practice | undefined,
): ShownTests {
  const windows = chosenWindows(record);
  return {
    analyses: analyseTests(record, model, { windows }),
    ...known({
      safe:
        practice && safeRate(record, model, safeRateInputs(record, model, practice), { windows }),
    }),
  };
}
