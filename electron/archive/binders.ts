import { ok, type Result } from '../../core/base/result.ts';
import type { Access } from './lists.ts';
import { dropBinder, listBinders, putBinder, type KeptBinder } from './tables/binders.ts';

export type { KeptBinder } from './tables/binders.ts';

/** Binders that are made again and again, by name. */
export interface Binders {
  list(): Result<readonly KeptBinder[]>;
  /** Takes the place of the one with its name. */
  put(name: string, json: string): Result<KeptBinder>;
  remove(name: string): Result<void>;
}

export function bindersOf({ reading, writing }: Access, now: () => string): Binders {
  return {
    list: () => reading((db) => ok(listBinders(db))),
    put: (name, json) =>
      writing((db) => {
        const kept = { name, json, changedAt: now() };
        putBinder(db, kept);
        return ok(kept);
      }),
    remove: (name) => writing((db) => ok(dropBinder(db, name))),
  };
}
