import type { WellModel } from '../model/wellModel.ts';
import type { Practice } from '../practice/practice.ts';
import type { WellRecord } from '../record/schema.ts';

/** A well with the practice that its quantities are reckoned by; `model` is that of `record`. */
export interface ReckonedWell {
  readonly record: WellRecord;
  readonly model: WellModel;
  readonly practice: Practice;
}
