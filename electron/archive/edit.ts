import { valueAt } from '../../core/base/recordPath.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { deskAfter, type Move } from '../../core/record/desk.ts';
import type { ReadRecord } from '../../core/record/read.ts';
import type { WriteHandle } from './handles.ts';
import { putLine } from './line.ts';
import { noWell } from './read.ts';
import { readDocument } from './readDocument.ts';
import { dropEdits, putEdit } from './tables/edits.ts';
import { findWell, type ListedWell } from './tables/wells.ts';
import { findWorking, putWorking, type Working } from './tables/working.ts';
import { isRevised, workingOf } from './working.ts';

/** Moves to be kept, with the number of the edit that they were made upon. */
export interface EditChange {
  readonly id: string;
  readonly upon: number;
  readonly moves: readonly Move[];
  readonly changedAt: string;
}

/** What is on disk after an edit. */
export interface KeptEdit {
  readonly edit: number;
  readonly changedAt: string;
  readonly unrevised: boolean;
  /** What could be read of the record as it is now, with its troubles. */
  readonly reading: ReadRecord;
}

export function staleEdit({ edit, changedAt }: Working, upon: number): Result<never> {
  return refused(
    'staleEdit',
    `Edit ${edit}, made at ${changedAt}, is newer than edit ${upon}, which this was made upon. Nothing was saved. Take the newer edits in first.`,
  );
}

/** The record of what was edited, unless it cannot be read or is of another well. */
function judged(record: unknown, id: string): Result<ReadRecord> {
  const inRecord = valueAt(record, 'identity.id');
  if (typeof inRecord === 'string' && inRecord !== '' && inRecord !== id)
    return refused(
      'otherWell',
      `identity.id: the record is of the well ${inRecord}, and was to be saved as ${id}. Open that well, or put its id back.`,
    );
  return readDocument(record);
}

/** Lists and finds a well by its working copy, so that no list is older than what was typed. */
function list(db: WriteHandle, well: ListedWell, { desk, changedAt }: Working): void {
  const { id, revision } = well;
  putLine(db, desk.record, { id, revision, changedAt });
}

function keep(db: WriteHandle, before: Working, after: Working, moves: readonly Move[]): void {
  const { wellId, changedAt: madeAt } = after;
  if (before.base === undefined) dropEdits(db, wellId);
  putWorking(db, { ...after, base: before.base ?? before.desk });
  for (const [at, move] of moves.entries())
    putEdit(db, wellId, { ...move, number: before.edit + 1 + at, madeAt });
}

/** Puts moves over a well's desk when `upon` is still its newest edit. */
export function editWell(db: WriteHandle, change: EditChange): Result<KeptEdit> {
  const { id, upon, moves, changedAt } = change;
  return db
    .transaction((): Result<KeptEdit> => {
      const well = findWell(db, id);
      if (!well) return noWell(id);
      const before = workingOf(db, well);
      if (!before.ok) return before;
      if (before.value.edit !== upon) return staleEdit(before.value, upon);
      const desk = deskAfter(before.value.desk, moves);
      const reading = judged(desk.record, id);
      if (!reading.ok) return reading;
      const revised = isRevised(db, well, desk.record);
      if (!revised.ok) return revised;
      const said = { edit: upon + moves.length, changedAt, unrevised: !revised.value };
      const after = { wellId: id, desk, ...said };
      keep(db, before.value, after, moves);
      list(db, well, after);
      return ok({ ...said, reading: reading.value });
    })
    .immediate();
}

/**
 * The next opening starts from the desk as it lies, and undo leads no further back. Does nothing
 * where `upon` is no longer the newest edit: then somebody else has the well open.
 */
export function leaveWell(db: WriteHandle, id: string, upon: number): Result<void> {
  return db
    .transaction((): Result<void> => {
      const kept = findWorking(db, id);
      if (!kept || kept.edit !== upon) return findWell(db, id) ? ok(undefined) : noWell(id);
      const { desk, edit, unrevised, changedAt } = kept;
      putWorking(db, { wellId: id, desk, edit, unrevised, changedAt });
      dropEdits(db, id);
      return ok(undefined);
    })
    .immediate();
}
