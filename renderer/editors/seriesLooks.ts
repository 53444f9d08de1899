import type { RecordPath } from '../../core/base/recordPath.ts';
import { saySeriesNote } from '../../core/hydraulics/sayHydraulics.ts';
import { seriesNotes, type SeriesNote } from '../../core/hydraulics/seriesNotes.ts';
import type { WellModel } from '../../core/model/wellModel.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { speech } from '../state/language.svelte.ts';
import type { TableLooks } from './chapter.ts';

const say = (notes: readonly SeriesNote[]) =>
  notes.map((note) => ({ path: note.path, said: saySeriesNote(note, speech.language) }));

/** What the analysis of a test makes of its readings, at the rows of `tests[i].series`. */
export function seriesLooks(record: WellRecord, model: WellModel, list: RecordPath): TableLooks {
  const index = Number(/^tests\[(\d+)\]/.exec(list)?.[1]);
  const { rows, whole } = seriesNotes(record, model, index);
  return { rows: new Map([...rows].map(([at, notes]) => [at, say(notes)])), whole: say(whole) };
}
