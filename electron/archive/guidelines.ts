import { ok, type Result } from '../../core/base/result.ts';
import type { Access } from './lists.ts';
import {
  dropGuidelines,
  listGuidelines,
  putGuidelines,
  type KeptGuidelines,
} from './tables/guidelines.ts';

export type { KeptGuidelines } from './tables/guidelines.ts';

/** Sets of guideline values of the user, that samples may be compared with. */
export interface Guidelines {
  list(): Result<readonly KeptGuidelines[]>;
  /** Takes the place of the one with its id. */
  put(id: string, json: string): Result<KeptGuidelines>;
  remove(id: string): Result<void>;
}

export function guidelinesIn({ reading, writing }: Access, now: () => string): Guidelines {
  return {
    list: () => reading((db) => ok(listGuidelines(db))),
    put: (id, json) =>
      writing((db) => {
        const kept = { id, json, changedAt: now() };
        putGuidelines(db, kept);
        return ok(kept);
      }),
    remove: (id) => writing((db) => ok(dropGuidelines(db, id))),
  };
}
