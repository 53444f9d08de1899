import type { WellModel } from '../model/wellModel.ts';
import type { Practice } from '../practice/practice.ts';
import type { WellRecord } from '../record/schema.ts';
import { groupIds, type Quantities } from './quantity.ts';

/** A well with the practice that its quantities are reckoned by. */
export interface ReckonedWell {
  readonly record: WellRecord;
  readonly model: WellModel;
  readonly practice: Practice;
}

/**
 * What a well takes in material, water and trips, as laid out or as built: by the geometry of its
 * model and the factors of the practice. `model` is that of `record`. Never throws.
 */
export function reckonQuantities(
  _record: WellRecord,
  _model: WellModel,
  _practice: Practice,
): Quantities {
  return { groups: groupIds.map((id) => ({ id, quantities: [], missing: [] })) };
}
