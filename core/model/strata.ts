import type { Finding } from '../base/finding.ts';
import type { DepthM } from '../base/units.ts';
import type { LogInterval } from '../record/log.ts';
import { found, type Resolved } from './findings.ts';
import { gapsIn, layFlat, liesWithin, overlapsOf } from './range.ts';
import { readRanges, type Placed } from './readRanges.ts';
import type { Stratum } from './wellModel.ts';

type Interval = Placed<LogInterval>;

/**
 * Of two intervals that overlap: one that lies wholly in the other is a lens and is kept; else
 * the upper one is kept to its foot, where the driller saw the change.
 */
function preferInterval(one: Interval, other: Interval): Interval {
  if (liesWithin(other, one)) return other;
  if (liesWithin(one, other)) return one;
  return other.fromM < one.fromM ? other : one;
}

/** The log freed of overlaps, in order of depth. Gaps are findings and stay gaps. */
export function resolveStrata(log: readonly LogInterval[]): Resolved<Stratum[]> {
  const read = readRanges('log', 'log', log);
  const overlaps = overlapsOf(read.value).map(({ fromM, toM, item: [, later] }) =>
    found('log.overlap', later.path, {}, { fromM, toM }),
  );
  const value = layFlat(read.value, preferInterval).map(({ fromM, toM, item }) => ({
    fromM,
    toM,
    interval: item.entry,
    path: item.path,
  }));
  return { value, findings: [...read.findings, ...overlaps] };
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
