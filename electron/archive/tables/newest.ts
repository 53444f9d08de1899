import type { Desk } from '../../../core/record/desk.ts';
import type { ReadHandle } from '../handles.ts';
import { kept } from '../kept.ts';

interface Row {
  readonly desk: string | null;
  readonly record: string | null;
}

/** A well's record as it is being worked on, or else its newest revision. */
export function newestDocument(db: ReadHandle, id: string): unknown {
  const row = kept<[string], Row>(
    db,
    `SELECT working.desk, revision.record FROM well
     LEFT JOIN working ON working.well_id = well.id
     LEFT JOIN revision ON revision.well_id = well.id AND revision.number = well.revision
     WHERE well.id = ?`,
  ).get(id);
  if (!row) return undefined;
  if (row.desk !== null) return (JSON.parse(row.desk) as Desk).record;
  return row.record === null ? undefined : (JSON.parse(row.record) as unknown);
}
