import type { RecordPath } from '../base/recordPath.ts';

/** What is wrong with a record at one place, as a sentence that starts with the place. */
export interface Trouble {
  readonly path: RecordPath;
  readonly sentence: string;
}

/** A trouble whose sentence starts with its place; the empty path is the whole record. */
export function troubleAt(path: RecordPath, says: string): Trouble {
  return { path, sentence: `${path || 'record'}: ${says}` };
}
