import type { WellModel } from '../../../model/wellModel.ts';
import type { Judgement } from '../../../practice/judgeWell.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { GuidelineSet } from '../../../water/guidelines/guidelineSet.ts';
import type { Kit } from '../../kit.ts';
import type { Paper } from '../../paper.ts';
import type { Template } from '../../parts/headStrip.ts';
import type { SwitchedColumn } from '../../parts/columnNames.ts';
import type { PhotoImages } from '../../parts/photos.ts';
import type { RevisionNote } from '../../parts/revisionNote.ts';

/** What a sheet says of how the well was judged. */
export type ShownJudgement = Pick<Judgement, 'practice' | 'findings'>;

/** All that the pages of one sheet are drawn from. */
export interface SheetInput {
  readonly record: WellRecord;
  readonly model: WellModel;
  /** Absent where nobody judged. */
  readonly judgement?: ShownJudgement;
  /** What samples are compared with; the general values where absent. */
  readonly guidelines?: GuidelineSet;
  readonly kit: Kit;
  readonly paper: Paper;
  /** Whether long plain stretches may be left out by a break; they may where absent. */
  readonly brokenAxis?: boolean;
  /** Columns of the log besides ruler, ground and section. */
  readonly columns: readonly SwitchedColumn[];
  /** Pictures that are at hand; the frames of the others say so. */
  readonly images?: PhotoImages;
  /** Of the organisation whose paper it is. */
  readonly template?: Template;
  /** What changed in the last revisions; absent for a record without a history. */
  readonly revisions?: readonly RevisionNote[];
}
