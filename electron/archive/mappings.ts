import { ok, type Result } from '../../core/base/result.ts';
import type { Access } from './lists.ts';
import { dropMapping, listMappings, putMapping, type KeptMapping } from './tables/mappings.ts';

export type { KeptMapping } from './tables/mappings.ts';

/** Matchings of imports that were given a name. */
export interface Mappings {
  list(): Result<readonly KeptMapping[]>;
  /** Takes the place of the one with its name. */
  put(name: string, json: string): Result<void>;
  remove(name: string): Result<void>;
}

export function mappingsOf({ reading, writing }: Access, now: () => string): Mappings {
  return {
    list: () => reading((db) => ok(listMappings(db))),
    put: (name, json) => writing((db) => ok(putMapping(db, { name, json, changedAt: now() }))),
    remove: (name) => writing((db) => ok(dropMapping(db, name))),
  };
}
