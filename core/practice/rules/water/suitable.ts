import type { Finding } from '../../../base/finding.ts';
import type { PumpLimit, PumpResults } from '../results.ts';
import { judged, notApplicable, type JudgedWell, type Verdict } from '../rule.ts';
import { givesWater } from '../stage.ts';

/** Judges the kind of pump by one of its limits, where that is handed in. */
export function judgeSuitable<V>(
  { record, results }: JudgedWell,
  limitOf: (pump: PumpResults) => PumpLimit<V> | undefined,
  say: (against: V) => Finding,
): Verdict {
  const limit = results?.pump && limitOf(results.pump);
  if (!limit || !givesWater(record)) return notApplicable;
  return judged(limit.against === undefined ? [] : [say(limit.against)], limit.missing);
}
