import type { WellModel } from '../../../core/model/wellModel.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { Handle } from './handle.ts';
import { boreHandles, fillHandles, logHandles } from './holeHandles.ts';
import { stringHandles } from './stringHandles.ts';
import { levelHandles, pumpHandles, strikeHandles } from './waterHandles.ts';

/**
 * All edges of a well that can be taken hold of: column by column from left to right, each from
 * the top down. What lies over another comes after it. A level that is `held` (the path of its
 * reading) is among them even when the drawing shows another one.
 */
export function handlesOf(record: WellRecord, model: WellModel, held?: string): Handle[] {
  return [
    strikeHandles(model),
    logHandles(record, model),
    boreHandles(record, model),
    fillHandles(record, model),
    stringHandles(record, model),
    [...pumpHandles(record, model), ...levelHandles(model, held)],
  ].flatMap((lane) => lane.toSorted((a, b) => a.depthM - b.depthM));
}
