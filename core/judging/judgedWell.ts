import { Memory } from '../base/memory.ts';
import type { WellModel } from '../model/wellModel.ts';
import { judgeWell, type Judgement } from '../practice/judgeWell.ts';
import type { Practice } from '../practice/practice.ts';
import type { WellRecord } from '../record/schema.ts';
import { guidelinesOf } from '../water/guidelines/chooseGuidelines.ts';
import type { GuidelineSet } from '../water/guidelines/guidelineSet.ts';
import { pumpResults } from './pumpResults.ts';
import { qualityResults } from './qualityResults.ts';

export interface JudgingOptions {
  /** What samples are compared with; the general values where absent. */
  readonly guidelines?: GuidelineSet;
  /** Keeps samples that did not change from being read anew. */
  readonly memory?: Memory;
}

const general = guidelinesOf(undefined);

/**
 * A resolved record judged by its practice, with what its water samples and its kind of pump tell.
 * Never throws for field data.
 */
export function judgedWell(
  record: WellRecord,
  model: WellModel,
  practice: Practice,
  { guidelines = general, memory = new Memory() }: JudgingOptions = {},
): Judgement {
  const quality = memory.recall('quality', qualityResults, [record.quality, guidelines]);
  const pump = pumpResults(record, model, practice);
  return judgeWell(record, model, practice, { ...quality, ...(pump ? { pump } : {}) });
}
