import type { WellModel } from '../../../model/wellModel.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { Kit } from '../../kit.ts';
import type { Paper } from '../../paper.ts';

/** All that the pages of one sheet are drawn from. */
export interface SheetInput {
  readonly record: WellRecord;
  readonly model: WellModel;
  readonly kit: Kit;
  readonly paper: Paper;
}
