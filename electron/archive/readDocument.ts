import { ok, refused, type Result } from '../../core/base/result.ts';
import { readRecord, type ReadRecord } from '../../core/record/read.ts';

/** Reads a record in any condition; refused only where none can be made out. */
export function readDocument(document: unknown): Result<ReadRecord> {
  const reading = readRecord(document);
  if (reading.kind === 'ok') return ok(reading);
  if (reading.kind === 'tooNew') return refused('recordTooNew', reading.sentence);
  return refused('unreadable', reading.troubles.map(({ sentence }) => sentence).join('; '));
}
