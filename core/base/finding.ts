import type { RecordPath } from './recordPath.ts';
import type { DepthM } from './units.ts';

/** error: the record contradicts itself; warning: look again; note: worth knowing. */
export type Severity = 'error' | 'warning' | 'note';

/**
 * What is said about a well, as data. The sentence is made from the catalogue by its code, so
 * that it can be said in any language.
 */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  /** The field that it speaks of. */
  readonly path: RecordPath;
  /** The depth or range that it speaks of, where there is one. */
  readonly fromM?: DepthM;
  readonly toM?: DepthM;
  /** Values that the sentence names. */
  readonly values: Readonly<Record<string, string | number>>;
}
