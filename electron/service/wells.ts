import { changesBetween } from '../../core/changes/changesBetween.ts';
import { sayChanges } from '../../core/changes/sayChanges.ts';
import { valueAt } from '../../core/base/recordPath.ts';
import { ok, type Result } from '../../core/base/result.ts';
import { troublesBesideFindings } from '../../core/record/consistency.ts';
import type { OpenedWell, StoredWell } from '../../core/contract/calls.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { Archive } from '../archive/archive.ts';
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

function opened(archive: Archive, id: string): Result<OpenedWell> {
  const well = shown(archive.open(id));
  if (!well.ok) return well;
  const working = archive.working(id);
  if (!working.ok) return working;
  const { base, moves, edit, unrevised, changedAt } = working.value;
  return ok({ ...well.value, working: { base, moves, edit, unrevised, changedAt } });
}

/** A person who compares two revisions wants all of it. */
const everything = { sentences: 400, letters: 400 };

/** Calls about wells, the work on them and their revisions. */
export function wellsHandlers({ archive, newId, settings, tell }: ServiceParts): Handlers<'wells'> {
  const said = (reason: string) => ({ author: settings.read().author ?? '', reason });
  const tellOf = (id: string) => {
    const mark = archive.mark(id);
    if (mark.ok) tell({ name: 'well.changed', data: mark.value });
  };
  return {
    'wells.list': reads(({ search }) => archive.list(search)),
    'wells.open': reads(({ id }) => opened(archive, id)),
    'wells.openRevision': reads(({ id, revision }) => shown(archive.openRevision(id, revision))),
    'wells.revisions': reads(({ id }) => archive.revisions(id)),
    'wells.desk': reads(({ id }) => {
      const working = archive.working(id);
      const mark = archive.mark(id);
      if (!working.ok) return working;
      if (!mark.ok) return mark;
      const { desk, edit, unrevised, changedAt } = working.value;
      return ok({ desk, edit, unrevised, changedAt, revision: mark.value.revision });
    }),
    'wells.create': writes(({ record }) => {
      const id = idIn(record) ?? newId();
      const whole = withId(record, id);
      const reading = readDocument(whole);
      if (!reading.ok) return reading;
      const created = archive.create(id, whole, said(''));
      if (!created.ok) return created;
      tellOf(id);
      return opened(archive, id);
    }),
    'wells.edit': writes(({ id, upon, moves }) => {
      const kept = archive.edit(id, { upon, moves });
      if (!kept.ok) return kept;
      tellOf(id);
      const { reading, ...state } = kept.value;
      return ok({ ...state, troubles: troublesBesideFindings(reading) });
    }),
    'wells.save': writes(({ id, upon, reason = '' }) => {
      const before = archive.mark(id);
      const saved = shown(archive.save(id, upon, said(reason)));
      if (!saved.ok) return saved;
      const { revision, changedAt, troubles } = saved.value;
      if (before.ok && before.value.revision !== revision) tellOf(id);
      return ok({ revision, changedAt, troubles });
    }),
    'wells.compare': reads(({ id, before, now, language }) => {
      const [older, newer] = [before, now].map((one) => shown(archive.openRevision(id, one)));
      if (!older!.ok) return older!;
      if (!newer!.ok) return newer!;
      const changes = changesBetween(older!.value.record, newer!.value.record, language);
      return ok(sayChanges(changes, language, everything));
    }),
    'wells.revert': writes(({ id, revision, reason = '' }) => {
      const reverted = archive.revert(
        id,
        revision,
        said(reason || `restored from revision ${revision}`),
      );
      if (!reverted.ok) return reverted;
      tellOf(id);
      return ok({ revision: reverted.value.revision });
    }),
    'wells.leave': writes(({ id, upon }) => {
      const left = archive.leave(id, upon);
      return left.ok ? ok(null) : left;
    }),
  };
}
