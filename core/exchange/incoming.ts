import type { WellRecord } from '../record/schema.ts';
import type { TableTrouble } from './tables/trouble.ts';

/** A file as it was given. */
export interface GivenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A well that a file tells of, and where in the file it stands. */
export interface IncomingWell {
  readonly record: WellRecord;
  readonly file: string;
  /** From 1; the first of several. */
  readonly line: number;
}

/** What was read of files in another format. Nothing is in the archive yet. */
export interface Incoming {
  readonly wells: readonly IncomingWell[];
  /** What does not come, or comes changed; by file, then by line. */
  readonly troubles: readonly TableTrouble[];
}
