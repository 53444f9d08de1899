import { ok, refused, type Result } from '../../core/base/result.ts';
import type { ReadHandle } from './handles.ts';
import { findRevision, listRevisions, type Revision } from './tables/revisions.ts';
import { findWell } from './tables/wells.ts';

/** A well's record at one revision, parsed but not yet judged. */
export interface StoredDocument {
  readonly id: string;
  readonly revision: number;
  /** ISO 8601. */
  readonly changedAt: string;
  readonly document: unknown;
}

/** One line of a well's history. */
export interface RevisionLine {
  readonly revision: number;
  readonly changedAt: string;
  /** SHA-256, hexadecimal, chained with the revision before. */
  readonly hash: string;
  /** Who made it, and why; empty where nobody said. */
  readonly author: string;
  readonly reason: string;
}

export function noWell(id: string): Result<never> {
  return refused(
    'noSuchWell',
    `The archive has no well with the id ${id}. Look for it in the list of wells.`,
  );
}

function documentOf({ wellId, number, changedAt, record }: Revision): StoredDocument {
  return { id: wellId, revision: number, changedAt, document: JSON.parse(record) as unknown };
}

/** A well's newest record. */
export function openWell(db: ReadHandle, id: string): Result<StoredDocument> {
  const well = findWell(db, id);
  return well ? openRevision(db, id, well.revision) : noWell(id);
}

/** A well's record as it was saved once. */
export function openRevision(db: ReadHandle, id: string, number: number): Result<StoredDocument> {
  const found = findRevision(db, id, number);
  if (found) return ok(documentOf(found));
  if (!findWell(db, id)) return noWell(id);
  return refused(
    'noSuchRevision',
    `The well has no revision ${number}. Choose one of those that its history lists.`,
  );
}

/** A well's history, first to last. */
export function revisionsOf(db: ReadHandle, id: string): Result<readonly RevisionLine[]> {
  if (!findWell(db, id)) return noWell(id);
  const lines = listRevisions(db, id);
  return ok(
    lines.map(({ number, changedAt, hash, author, reason }) => ({
      ...{ revision: number, changedAt, hash, author, reason },
    })),
  );
}
