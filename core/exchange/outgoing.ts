import type { WellRecord } from '../record/schema.ts';

/** A file that is to be written. */
export interface MadeFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What a format cannot hold of a record. */
export interface Loss {
  /** Number of the well, else its id. */
  readonly well: string;
  /** The field that does not go out, or goes out changed. */
  readonly path: string;
  readonly sentence: string;
}

export interface Outgoing {
  readonly files: readonly MadeFile[];
  readonly losses: readonly Loss[];
}

/** A record with what the archive says of it. */
export interface OutgoingWell {
  readonly record: WellRecord;
  /** From 1. */
  readonly revision: number;
  /** ISO 8601 moment of the revision. */
  readonly changedAt: string;
}
