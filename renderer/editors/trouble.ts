import { say } from '../parts/words.ts';
import { join, type Desk } from '../state/desk.ts';
import type { RecordPath } from '../../core/base/recordPath.ts';
import type { EntryField } from './fields/entryField.ts';

/** Why what was typed in a field is not in the record; undefined where nothing stands in the way. */
export function troubleOf(
  desk: Desk,
  base: RecordPath,
  field: EntryField,
  isRow: boolean,
): string | undefined {
  const typed = desk.typed[join(base, field.name)];
  if (typed === undefined) return undefined;
  const reading = field.read(typed);
  if (!reading.ok) return reading.sentence;
  return isRow && field.required && reading.value === undefined ? say.reading.needed : undefined;
}
