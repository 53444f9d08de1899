import type { WellModel } from '../model/wellModel.ts';
import type { WellRecord } from '../record/schema.ts';

/** Answers by the state of a record and of its model, gone with either. */
const answers = new WeakMap<WellRecord, WeakMap<WellModel, Map<string, unknown>>>();

/**
 * What `make` gives for a record and its model, reckoned once for both. `question` names all else
 * that it goes by. A record that is not frozen can change under the same name, and is asked anew.
 */
export function oncePerState<T>(
  record: WellRecord,
  model: WellModel,
  question: string,
  make: () => T,
): T {
  if (!Object.isFrozen(record) || !Object.isFrozen(record.tests)) return make();
  const byModel = answers.get(record) ?? new WeakMap<WellModel, Map<string, unknown>>();
  answers.set(record, byModel);
  const known = byModel.get(model) ?? new Map<string, unknown>();
  byModel.set(model, known);
  if (!known.has(question)) known.set(question, make());
  return known.get(question) as T;
}
