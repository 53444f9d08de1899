import type { Finding } from '../base/finding.ts';
import type { DepthM } from '../base/units.ts';
import type { LogInterval } from '../record/log.ts';
import { found, type Resolved } from './findings.ts';
import { gapsIn, layFlat, liesWithin, overlapsOf, type Range } from './range.ts';
import { readRanges, type Placed } from './readRanges.ts';
import type { LoggedInterval, Stratum } from './wellModel.ts';

/** All rows of the log that have one and the same range, the first written first. */
interface SharedRange extends Range {
  readonly rows: readonly [LoggedInterval, ...LoggedInterval[]];
}

/** Drillers write two rows for one range where two materials alternate: together they are one. */
function shareRanges(intervals: readonly Placed<LogInterval>[]): SharedRange[] {
  const shared = new Map<string, SharedRange>();
  for (const { fromM, toM, entry, path } of intervals) {
    const key = `${fromM} ${toM}`;
    const row = { interval: entry, path };
    const before = shared.get(key);
    shared.set(key, { fromM, toM, rows: before ? [...before.rows, row] : [row] });
  }
  return [...shared.values()];
}

/**
 * Of two ranges that overlap: one that lies wholly in the other is a lens and is kept; else
 * the upper one is kept to its foot, where the driller saw the change.
 */
function preferRange(one: SharedRange, other: SharedRange): SharedRange {
  if (liesWithin(other, one)) return other;
  if (liesWithin(one, other)) return one;
  return other.fromM < one.fromM ? other : one;
}

function checkShared({ fromM, toM, rows: [, second], rows }: SharedRange): Finding[] {
  if (!second) return [];
  return [found('log.sameRange', second.path, { count: rows.length }, { fromM, toM })];
}

/**
 * The log freed of overlaps, in order of depth. Rows of one range are one stratum that keeps them
 * all. Gaps are findings and stay gaps.
 */
export function resolveStrata(log: readonly LogInterval[]): Resolved<Stratum[]> {
  const read = readRanges('log', 'log', log);
  const shared = shareRanges(read.value);
  const overlaps = overlapsOf(shared).map(({ fromM, toM, item: [, later] }) =>
    found('log.overlap', later.rows[0].path, {}, { fromM, toM }),
  );
  const value = layFlat(shared, preferRange).map(({ fromM, toM, item }) => {
    const [first, ...others] = item.rows;
    return { fromM, toM, ...first, others };
  });
  return { value, findings: [...read.findings, ...shared.flatMap(checkShared), ...overlaps] };
}

/** All that the log says of a stratum, its first interval first. */
export function intervalsOf({ interval, others }: Stratum): LogInterval[] {
  return [interval, ...others.map((other) => other.interval)];
}

/** What a log leaves out between ground and the foot of the hole, and what it has too much. */
export function checkStrata(strata: readonly Stratum[], depthM: DepthM | undefined): Finding[] {
  const [top, last] = [strata[0], strata.at(-1)];
  if (!top || !last) return [];
  const findings = gapsIn(strata, 0, last.toM).map((gap) => found('log.gap', 'log', {}, gap));
  if (top.fromM < 0)
    findings.push(found('log.aboveGround', top.path, {}, { fromM: top.fromM, toM: 0 }));
  if (depthM === undefined) return findings;
  if (last.toM < depthM)
    findings.push(found('log.short', 'log', {}, { fromM: Math.max(last.toM, 0), toM: depthM }));
  if (last.toM > depthM)
    findings.push(found('log.belowHole', last.path, { depthM }, { fromM: depthM, toM: last.toM }));
  return findings;
}
