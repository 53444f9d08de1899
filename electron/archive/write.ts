import { ok, refused, type Result } from '../../core/base/result.ts';
import { chainStart, linkHash } from './chain.ts';
import { staleEdit } from './edit.ts';
import type { WriteHandle } from './handles.ts';
import { putLine } from './line.ts';
import { noWell, openWell, type StoredDocument } from './read.ts';
import { findRevision, putRevision } from './tables/revisions.ts';
import { findWell } from './tables/wells.ts';
import { putWorking } from './tables/working.ts';
import { isRevised, workingOf } from './working.ts';

/** Who makes a revision, and why. */
export interface Sayings {
  readonly author?: string;
  readonly reason?: string;
}

/** Writes a revision, and the well's line by it. */
export function putNext(
  db: WriteHandle,
  next: StoredDocument,
  previousHash: string,
  { author = '', reason = '' }: Sayings,
): void {
  const { id, revision, changedAt, document } = next;
  putLine(db, document, { id, revision, changedAt });
  const record = JSON.stringify(document);
  const link = { wellId: id, number: revision, changedAt, record, author, reason };
  putRevision(db, { ...link, hash: linkHash(previousHash, link) });
}

/** Puts a new well in, as its revision 1. Refused when the id is taken. */
export function createWell(
  db: WriteHandle,
  { said = {}, ...well }: Omit<StoredDocument, 'revision'> & { readonly said?: Sayings },
): Result<StoredDocument> {
  const created = { ...well, revision: 1 };
  return db
    .transaction((): Result<StoredDocument> => {
      if (findWell(db, well.id))
        return refused(
          'wellExists',
          `The archive has a well with the id ${well.id} already. Open that one, or take the id out of the record to make another well of it.`,
        );
      putNext(db, created, chainStart, said);
      return ok(created);
    })
    .immediate();
}

interface SaveChange {
  readonly id: string;
  readonly upon: number;
  readonly changedAt: string;
  readonly said?: Sayings;
}

/**
 * Makes the next revision of a well's record as it is worked on, when `upon` is still the newest
 * edit. A record that is the newest revision's already makes none.
 */
export function saveWell(
  db: WriteHandle,
  { id, upon, changedAt, said = {} }: SaveChange,
): Result<StoredDocument> {
  return db
    .transaction((): Result<StoredDocument> => {
      const well = findWell(db, id);
      if (!well) return noWell(id);
      const working = workingOf(db, well);
      if (!working.ok) return working;
      if (working.value.edit !== upon) return staleEdit(working.value, upon);
      const document = working.value.desk.record;
      const revised = isRevised(db, well, document);
      if (!revised.ok) return revised;
      if (revised.value) return openWell(db, id);
      const { hash } = findRevision(db, id, well.revision)!;
      const next = { id, revision: well.revision + 1, changedAt, document };
      putNext(db, next, hash, said);
      putWorking(db, { ...working.value, unrevised: false });
      return ok(next);
    })
    .immediate();
}
