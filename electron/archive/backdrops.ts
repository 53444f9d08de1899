import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Access } from './lists.ts';
import {
  countBackdrops,
  dropBackdrop,
  listBackdrops,
  putBackdrop,
  type KeptBackdrop,
} from './tables/backdrops.ts';

/** Most backdrops of an archive: every map reads all of them. */
export const mostBackdrops = 12;

/** What lies under the wells of the archive's map. */
export interface Backdrops {
  list(): Result<readonly KeptBackdrop[]>;
  add(backdrop: Omit<KeptBackdrop, 'addedAt'>): Result<KeptBackdrop>;
  remove(id: string): Result<number>;
}

export function backdropsOf({ reading, writing }: Access, now: () => string): Backdrops {
  return {
    list: () => reading((db) => ok(listBackdrops(db))),
    add: (backdrop) =>
      writing((db) => {
        if (countBackdrops(db) >= mostBackdrops)
          return refused(
            'tooManyBackdrops',
            `The map has ${mostBackdrops} backdrops already. Remove one of them first.`,
          );
        const added = { ...backdrop, addedAt: now() };
        putBackdrop(db, added);
        return ok(added);
      }),
    remove: (id) =>
      writing((db) => {
        dropBackdrop(db, id);
        return ok(countBackdrops(db));
      }),
  };
}
