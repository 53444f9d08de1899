import type { Finding } from '../base/finding.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { DepthM } from '../base/units.ts';
import { found, type Resolved } from './findings.ts';
import { isRange, roundDepth, type Range } from './range.ts';

/** An entry of a list in the record with its range put right. */
export interface Placed<T> extends Range {
  readonly entry: T;
  readonly path: RecordPath;
}

interface FromTo {
  readonly from: DepthM;
  readonly to: DepthM;
}

/**
 * Reads the ranges of a list of the record. Ends that were written the wrong way round are
 * swapped, a range without length is left out; both are said.
 */
export function readRanges<T extends FromTo>(
  chapter: 'bore' | 'log' | 'annulus',
  listPath: RecordPath,
  list: readonly T[],
): Resolved<Placed<T>[]> {
  const findings: Finding[] = [];
  const value = list.flatMap((entry, at) => {
    const path = `${listPath}[${at}]`;
    const [from, to] = [roundDepth(entry.from), roundDepth(entry.to)];
    const range = { fromM: Math.min(from, to), toM: Math.max(from, to) };
    if (!isRange(range)) {
      findings.push(found(`${chapter}.empty`, path, {}, { fromM: from }));
      return [];
    }
    if (from > to) findings.push(found(`${chapter}.reversed`, path, {}, range));
    return [{ ...range, entry, path }];
  });
  return { value, findings };
}
