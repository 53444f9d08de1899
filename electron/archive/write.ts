import { ok, refused, type Result } from '../../core/base/result.ts';
import { chainStart, linkHash } from './chain.ts';
import type { WriteHandle } from './handles.ts';
import { noWell, type StoredDocument } from './read.ts';
import { findRevision, putRevision } from './tables/revisions.ts';
import { putSearchText } from './tables/search.ts';
import { findWell, listed, putWell, type ListedWell } from './tables/wells.ts';
import { searchText } from './words.ts';

/** A record to be kept as the next revision of a well. */
export interface NextRevision {
  readonly id: string;
  readonly revision: number;
  readonly changedAt: string;
  readonly document: unknown;
}

function put(db: WriteHandle, next: NextRevision, json: string, previousHash: string): void {
  const { id, revision, changedAt, document } = next;
  const seq = putWell(db, listed(document, { id, revision, changedAt }));
  putSearchText(db, seq, searchText(document));
  const link = { wellId: id, number: revision, changedAt, record: json };
  putRevision(db, { ...link, hash: linkHash(previousHash, link) });
}

/** Puts a new well in, as its revision 1. Refused when the id is taken. */
export function createWell(
  db: WriteHandle,
  well: Omit<NextRevision, 'revision'>,
): Result<StoredDocument> {
  const created = { ...well, revision: 1 };
  return db
    .transaction((): Result<StoredDocument> => {
      if (findWell(db, well.id))
        return refused(
          'wellExists',
          `The archive has a well with the id ${well.id} already. Open that one, or take the id out of the record to make another well of it.`,
        );
      put(db, created, JSON.stringify(well.document), chainStart);
      return ok(created);
    })
    .immediate();
}

function stale(well: ListedWell, from: number): Result<never> {
  const newer = `Revision ${well.revision}, saved at ${well.changedAt}, is newer than revision ${from}, which this was made from.`;
  return refused(
    'staleRevision',
    `${newer} Nothing was saved. Open the well again and make the change there.`,
  );
}

/**
 * Keeps a record as the next revision when `revision` is still the newest. A record that is the
 * newest one letter for letter makes no revision.
 */
export function saveWell(db: WriteHandle, change: NextRevision): Result<StoredDocument> {
  const { id, revision } = change;
  return db
    .transaction((): Result<StoredDocument> => {
      const well = findWell(db, id);
      if (!well) return noWell(id);
      if (well.revision !== revision) return stale(well, revision);
      const newest = findRevision(db, id, revision)!;
      const json = JSON.stringify(change.document);
      if (json === newest.record) return ok({ ...change, changedAt: newest.changedAt });
      const next = { ...change, revision: revision + 1 };
      put(db, next, json, newest.hash);
      return ok(next);
    })
    .immediate();
}
