import type { RecordPath } from '../../base/recordPath.ts';

/** A line of the particulars: what, and what is known of it. */
export interface Fact {
  readonly what: string;
  readonly says: string;
  readonly source: RecordPath;
}

/** A fact of the parts that are known, joined by commas; none where nothing is known. */
export function fact(
  what: string,
  parts: readonly (string | undefined)[],
  source: RecordPath,
): Fact[] {
  const says = parts.filter((part) => part !== undefined && part !== '').join(', ');
  return says === '' ? [] : [{ what, says, source }];
}
