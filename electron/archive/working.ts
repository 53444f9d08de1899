import { isSame } from '../../core/base/patch.ts';
import { ok, type Result } from '../../core/base/result.ts';
import type { Desk, Move } from '../../core/record/desk.ts';
import { currentVersion, type WellRecord } from '../../core/record/schema.ts';
import type { ReadHandle } from './handles.ts';
import { noWell, openRevision } from './read.ts';
import { readDocument } from './readDocument.ts';
import { listEdits } from './tables/edits.ts';
import { findWell, type ListedWell } from './tables/wells.ts';
import { findWorking, type Working } from './tables/working.ts';

/** A well as it is being worked on, which is at or ahead of its newest revision. */
export interface WorkingCopy extends Omit<Working, 'wellId'> {
  /** The desk as it was opened last: as far as undo leads back. */
  readonly base: Desk;
  /** What was done since, first to last. */
  readonly moves: readonly Move[];
}

/** What could be read of the newest revision. */
function newestRecord(db: ReadHandle, well: ListedWell): Result<WellRecord> {
  const stored = openRevision(db, well.id, well.revision);
  const reading = stored.ok ? readDocument(stored.value.document) : stored;
  return reading.ok ? ok(reading.value.record) : reading;
}

/** Whether a record is the newest revision's, so that there is nothing to make another of. */
export function isRevised(db: ReadHandle, well: ListedWell, record: WellRecord): Result<boolean> {
  const newest = newestRecord(db, well);
  return newest.ok ? ok(isSame(newest.value, record)) : newest;
}

/**
 * A working copy that an older version of the program left is opened anew in today's shape: its
 * patches were made for the shape of then.
 */
function inTodaysShape({ base, ...kept }: Working): Result<Working> {
  if (kept.desk.record.schemaVersion === currentVersion)
    return ok(base === undefined ? kept : { ...kept, base });
  const reading = readDocument(kept.desk.record);
  if (!reading.ok) return reading;
  return ok({ ...kept, desk: { ...kept.desk, record: reading.value.record } });
}

/** The working copy, or what one starts from: the newest revision. */
export function workingOf(db: ReadHandle, well: ListedWell): Result<Working> {
  const kept = findWorking(db, well.id);
  if (kept) return inTodaysShape(kept);
  const record = newestRecord(db, well);
  if (!record.ok) return record;
  const { id: wellId, changedAt } = well;
  const desk = { record: record.value, typed: {} };
  return ok({ wellId, desk, edit: 0, unrevised: false, changedAt });
}

/** A well's working copy with the way that led to it. */
export function openWorking(db: ReadHandle, id: string): Result<WorkingCopy> {
  const well = findWell(db, id);
  if (!well) return noWell(id);
  const working = workingOf(db, well);
  if (!working.ok) return working;
  const { wellId, base, ...present } = working.value;
  const moves = base ? listEdits(db, wellId).map(({ kind, patch }) => ({ kind, patch })) : [];
  return ok({ ...present, base: base ?? present.desk, moves });
}
