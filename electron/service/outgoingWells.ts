import { ok, type Result } from '../../core/base/result.ts';
import type { OutgoingWell } from '../../core/exchange/outgoing.ts';
import { readRecord } from '../../core/record/read.ts';
import type { WellFilter } from '../../core/record/wellFilter.ts';
import type { Archive } from '../archive/archive.ts';
import { storedWell } from './stored.ts';

/** A well on its way out. */
export interface WellOut extends OutgoingWell {
  /** Something was typed that is in no revision yet, and does not go out. */
  readonly unrevised: boolean;
}

/** More than any archive has. */
const all = { from: 0, limit: Number.MAX_SAFE_INTEGER };

function read(archive: Archive, id: string): Result<OutgoingWell> {
  const stored = archive.open(id);
  if (!stored.ok) return stored;
  const { revision, changedAt, document } = stored.value;
  const reading = readRecord(document);
  if (reading.kind === 'ok') return ok({ record: reading.record, revision, changedAt });
  // Says in its sentence why the record cannot be read.
  const refusal = storedWell(stored.value);
  if (!refusal.ok) return refusal;
  throw new Error(`The record of ${id} was read the second time and not the first`);
}

/** The wells that fit a filter, by number, each at its newest revision; one in memory at a time. */
export function* outgoingWells(archive: Archive, filter: WellFilter): Generator<Result<WellOut>> {
  const found = archive.lists.find(filter, { by: 'number' }, all);
  if (!found.ok) {
    yield found;
    return;
  }
  for (const { id, unrevised } of found.value) {
    const well = read(archive, id);
    yield well.ok ? ok({ ...well.value, unrevised }) : well;
  }
}
