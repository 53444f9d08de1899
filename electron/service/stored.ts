import { ok, type Result } from '../../core/base/result.ts';
import { troublesBesideFindings } from '../../core/record/consistency.ts';
import type { StoredWell } from '../../core/contract/calls.ts';
import type { StoredDocument } from '../archive/read.ts';
import { readDocument } from '../archive/readDocument.ts';

export { readDocument };

/** A well as pages are given it. */
export function storedWell(stored: StoredDocument): Result<StoredWell> {
  const { id, revision, changedAt } = stored;
  const reading = readDocument(stored.document);
  if (!reading.ok) return reading;
  const { record, document } = reading.value;
  const troubles = troublesBesideFindings(reading.value);
  return ok({ id, revision, changedAt, record, document, troubles });
}
