import { ok, type Result } from '../../core/base/result.ts';
import type { Archive } from '../archive/archive.ts';
import type { PaperMark } from '../seal/readPaperMark.ts';
import { recordHash } from '../seal/recordHash.ts';
import { storedWell } from './stored.ts';

/**
 * Whether an archive holds the record that a paper shows. `same`: as one of the well's revisions.
 * `other`: it has the well, and no revision of it is that record. `noWell`: it has no well of that
 * number. `unsaid`: the paper does not say which record it shows.
 */
export type HeldRecord =
  | {
      readonly held: 'same';
      readonly id: string;
      readonly revision: number;
      readonly newest: number;
    }
  | { readonly held: 'other'; readonly id: string; readonly newest: number }
  | { readonly held: 'noWell' }
  | { readonly held: 'unsaid' };

interface Candidate {
  readonly id: string;
  readonly newest: number;
}

/** The revision that the paper names comes first, then the newest and those before it. */
function revisionsToTry({ newest }: Candidate, named: number | undefined): readonly number[] {
  const all = Array.from({ length: newest }, (_, at) => newest - at);
  return all.toSorted((a, b) => Number(b === named) - Number(a === named));
}

function revisionOf(
  archive: Archive,
  candidate: Candidate,
  mark: PaperMark,
): Result<number | undefined> {
  for (const revision of revisionsToTry(candidate, mark.revision)) {
    const stored = archive.openRevision(candidate.id, revision);
    const well = stored.ok ? storedWell(stored.value) : stored;
    if (!well.ok) return well;
    if (recordHash(well.value.record) === mark.recordHash) return ok(revision);
  }
  return ok(undefined);
}

/** Looks in an archive for the record that a paper shows, by its well’s number and its hash. */
export function heldRecord(archive: Archive, mark: PaperMark): Result<HeldRecord> {
  if (mark.recordHash === undefined) return ok({ held: 'unsaid' });
  const listed = archive.list();
  if (!listed.ok) return listed;
  const candidates = listed.value
    .filter(({ number }) => number === (mark.wellNumber ?? ''))
    .map(({ id, revision }) => ({ id, newest: revision }));
  for (const candidate of candidates) {
    const revision = revisionOf(archive, candidate, mark);
    if (!revision.ok) return revision;
    if (revision.value !== undefined)
      return ok({ held: 'same', ...candidate, revision: revision.value });
  }
  const [first] = candidates;
  return ok(first ? { held: 'other', ...first } : { held: 'noWell' });
}
