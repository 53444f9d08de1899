import type { WellRecord } from '../../../core/record/schema.ts';

/** A record in which nothing is written yet: a sheet that says so, and no more. */
export function emptyRecord(): WellRecord {
  return { schemaVersion: 1 };
}
