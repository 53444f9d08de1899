import { changesBetween } from '../../core/changes/changesBetween.ts';
import { sayChanges } from '../../core/changes/sayChanges.ts';
import { changeWordsIn } from '../../core/changes/words/languages.ts';
import type { Language } from '../../core/base/language.ts';
import { ok, type Result } from '../../core/base/result.ts';
import type { RevisionNote } from '../../core/drawing/parts/revisionNote.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { Archive } from '../archive/archive.ts';
import { storedWell } from './stored.ts';

type Revisions = Pick<Archive, 'revisions' | 'openRevision'>;

/** Revisions that a paper tells of: each is read and compared with the one before. */
const mostTold = 4;

function recordAt(archive: Revisions, id: string, revision: number): Result<WellRecord> {
  const stored = archive.openRevision(id, revision);
  if (!stored.ok) return stored;
  const well = storedWell(stored.value);
  return well.ok ? ok(well.value.record) : well;
}

/**
 * Who made the last revisions of a well up to one of them, why, and what changed since the one before;
 * none for a well that was saved once.
 */
export function revisionNotes(
  archive: Revisions,
  id: string,
  upTo: number,
  language: Language,
): Result<readonly RevisionNote[]> {
  const listed = archive.revisions(id);
  if (!listed.ok) return listed;
  const told = listed.value.filter(({ revision }) => revision <= upTo).slice(-mostTold - 1);
  if (told.length < 2) return ok([]);
  const notes: RevisionNote[] = [];
  let before: WellRecord | undefined;
  for (const { revision, changedAt, author, reason } of told) {
    const record = recordAt(archive, id, revision);
    if (!record.ok) return record;
    const changes = before
      ? sayChanges(changesBetween(before, record.value, language), language)
      : [changeWordsIn(language).first];
    if (before || revision === 1)
      notes.push({
        ...{ number: revision, on: changedAt, changes: reason ? [reason, ...changes] : changes },
        ...(author === '' ? {} : { by: author }),
      });
    before = record.value;
  }
  return ok(notes.slice(-mostTold));
}
