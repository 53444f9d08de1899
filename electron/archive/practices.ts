import { ok, type Result } from '../../core/base/result.ts';
import type { Access } from './lists.ts';
import { dropPractice, listPractices, putPractice, type KeptPractice } from './tables/practices.ts';

export type { KeptPractice } from './tables/practices.ts';

/** Practices of the user, that the archive's wells may be judged by. */
export interface Practices {
  list(): Result<readonly KeptPractice[]>;
  /** Takes the place of the one with its id. */
  put(id: string, json: string): Result<KeptPractice>;
  remove(id: string): Result<void>;
}

export function practicesOf({ reading, writing }: Access, now: () => string): Practices {
  return {
    list: () => reading((db) => ok(listPractices(db))),
    put: (id, json) =>
      writing((db) => {
        const kept = { id, json, changedAt: now() };
        putPractice(db, kept);
        return ok(kept);
      }),
    remove: (id) => writing((db) => ok(dropPractice(db, id))),
  };
}
