import { valueAt } from '../../core/base/recordPath.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { troublesBesideFindings } from '../../core/record/consistency.ts';
import type { StoredWell } from '../../core/contract/calls.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { StoredDocument } from '../archive/read.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';
import { readDocument, storedWell } from './stored.ts';

function idIn(record: WellRecord): string | undefined {
  const id = valueAt(record, 'identity.id');
  return typeof id === 'string' && id !== '' ? id : undefined;
}

/** The record with its id, which it keeps for good; otherwise as given. */
function withId(record: WellRecord, id: string): WellRecord {
  return idIn(record) === id ? record : { ...record, identity: { ...record.identity, id } };
}

function shown(stored: Result<StoredDocument>): Result<StoredWell> {
  return stored.ok ? storedWell(stored.value) : stored;
}

function otherWell(id: string, inRecord: string): Result<never> {
  return refused(
    'otherWell',
    `identity.id: the record is of the well ${inRecord}, and was to be saved as ${id}. Open that well, or put its id back.`,
  );
}

/** Calls about wells and their revisions. */
export function wellsHandlers({ archive, newId, tell }: ServiceParts): Handlers<'wells'> {
  const tellChanged = ({ id, revision, changedAt }: StoredDocument) =>
    tell({ name: 'well.changed', data: { id, revision, changedAt } });
  return {
    'wells.list': reads(({ search }) => archive.list(search)),
    'wells.open': reads(({ id }) => shown(archive.open(id))),
    'wells.openRevision': reads(({ id, revision }) => shown(archive.openRevision(id, revision))),
    'wells.revisions': reads(({ id }) => archive.revisions(id)),
    'wells.create': writes(({ record }) => {
      const id = idIn(record) ?? newId();
      const whole = withId(record, id);
      const reading = readDocument(whole);
      if (!reading.ok) return reading;
      const created = archive.create(id, whole);
      if (created.ok) tellChanged(created.value);
      return shown(created);
    }),
    'wells.save': writes(({ id, revision, record }) => {
      const reading = readDocument(record);
      if (!reading.ok) return reading;
      const inRecord = idIn(record);
      if (inRecord !== undefined && inRecord !== id) return otherWell(id, inRecord);
      const saved = archive.save(id, revision, record);
      if (!saved.ok) return saved;
      if (saved.value.revision !== revision) tellChanged(saved.value);
      const { changedAt } = saved.value;
      const troubles = troublesBesideFindings(reading.value);
      return ok({ revision: saved.value.revision, changedAt, troubles });
    }),
  };
}
