import { judgedWell } from '../../core/judging/judgedWell.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { WellModel } from '../../core/model/wellModel.ts';
import { practiceOf } from '../../core/practice/choosePractice.ts';
import type { Judgement } from '../../core/practice/judgeWell.ts';
import type { PracticeFile } from '../../core/practice/practice.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { guidelinesOf } from '../../core/water/guidelines/chooseGuidelines.ts';
import type { GuidelineFile, GuidelineSet } from '../../core/water/guidelines/guidelineSet.ts';

/** What the user has besides what is shipped. */
export interface OwnFiles {
  /** Practices that a record may name. */
  readonly own?: readonly PracticeFile[];
  /** Sets of guideline values that a record may name. */
  readonly ownGuidelines?: readonly GuidelineFile[];
}

/** What all papers of a record say of it, reckoned once and handed to each of them. */
export interface ReckonedWell {
  readonly model: WellModel;
  readonly guidelines: GuidelineSet;
  /** Its practice, and what the rules say. */
  readonly judgement: Judgement;
}

/** A record resolved, and judged by the practice and the guideline values that it names. */
export function reckonWell(
  record: WellRecord,
  { own, ownGuidelines }: OwnFiles = {},
): ReckonedWell {
  const model = resolveWell(record);
  const guidelines = guidelinesOf(record.identity?.guidelines, ownGuidelines);
  const judgement = judgedWell(record, model, practiceOf(record, own), { guidelines });
  return { model, guidelines, judgement };
}
