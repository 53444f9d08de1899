import type { WellModel } from '../../../model/wellModel.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { GuidelineSet } from '../../../water/guidelines/guidelineSet.ts';
import type { Template } from '../../parts/headStrip.ts';
import type { PhotoImages } from '../../parts/photos.ts';
import type { SheetFacts } from './titleBlock.ts';

/** What the sheet is laid from. */
export interface CommitteeContent {
  readonly record: WellRecord;
  readonly model: WellModel;
  readonly guidelines: GuidelineSet;
  readonly facts: SheetFacts;
  /** Pictures of marks that are at hand, by hash. */
  readonly images: PhotoImages;
  /** What the organisation has on its papers. */
  readonly template?: Template;
}
