import type { Result } from '../../core/base/result.ts';
import { reviseWell } from './bring.ts';
import type { WriteHandle } from './handles.ts';
import { noWell, openRevision, openWell, type StoredDocument } from './read.ts';
import { findWell } from './tables/wells.ts';
import type { Sayings } from './write.ts';

export interface Revert {
  readonly id: string;
  /** The older revision whose record is to stand again. */
  readonly revision: number;
  readonly changedAt: string;
  readonly said: Sayings;
}

/**
 * Makes an older revision's record the next revision; those between stay as they are. Refusals:
 * `noSuchWell`, `noSuchRevision`, `typedSince` where something typed is in no revision, `wellInBin`.
 */
export function revertWell(db: WriteHandle, revert: Revert): Result<StoredDocument> {
  const { id, revision, changedAt, said } = revert;
  return db
    .transaction((): Result<StoredDocument> => {
      const well = findWell(db, id);
      if (!well) return noWell(id);
      const older = openRevision(db, id, revision);
      if (!older.ok) return older;
      const next = { id, changedAt, document: older.value.document };
      const revised = reviseWell(db, well, next, said);
      return revised.ok ? openWell(db, id) : revised;
    })
    .immediate();
}
