import { ok, type Result } from '../../core/base/result.ts';
import type { Access } from './lists.ts';
import { noWell } from './read.ts';
import { dropBinned, listBin, setBinned, type BinnedWell } from './tables/bin.ts';
import { findWell } from './tables/wells.ts';

/** Where wells lie that nobody wants, with all that is kept of them, until it is emptied. */
export interface Bin {
  list(): Result<readonly BinnedWell[]>;
  /** Also done where the well is there already. */
  put(id: string): Result<void>;
  putBack(id: string): Result<void>;
  /** Takes those of these wells that are in the bin out of the archive; all of them or none. */
  empty(ids: readonly string[]): Result<number>;
}

export function binOf({ reading, writing }: Access, now: () => string): Bin {
  const set = (id: string, binnedAt: string | null) =>
    writing((db) => {
      setBinned(db, id, binnedAt);
      return findWell(db, id) ? ok(undefined) : noWell(id);
    });
  return {
    list: () => reading((db) => ok(listBin(db))),
    put: (id) => set(id, now()),
    putBack: (id) => set(id, null),
    empty: (ids) =>
      writing((db) =>
        ok(db.transaction(() => ids.filter((id) => dropBinned(db, id)).length).immediate()),
      ),
  };
}
