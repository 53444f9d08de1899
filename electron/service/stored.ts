import { ok, refused, type Result } from '../../core/base/result.ts';
import { troublesBesideFindings } from '../../core/record/consistency.ts';
import { readRecord, type ReadRecord } from '../../core/record/read.ts';
import type { StoredWell } from '../../core/contract/calls.ts';
import type { StoredDocument } from '../archive/read.ts';

/** Reads a record in any condition; refused only where none can be made out. */
export function readDocument(document: unknown): Result<ReadRecord> {
  const reading = readRecord(document);
  if (reading.kind === 'ok') return ok(reading);
  if (reading.kind === 'tooNew') return refused('recordTooNew', reading.sentence);
  return refused('unreadable', reading.troubles.map(({ sentence }) => sentence).join('; '));
}

/** A well as pages are given it. */
export function storedWell(stored: StoredDocument): Result<StoredWell> {
  const { id, revision, changedAt } = stored;
  const reading = readDocument(stored.document);
  if (!reading.ok) return reading;
  const { record, document } = reading.value;
  const troubles = troublesBesideFindings(reading.value);
  return ok({ id, revision, changedAt, record, document, troubles });
}
