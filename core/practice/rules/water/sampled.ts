import { askedOf } from '../service/asked.ts';
import type { WaterResults } from '../results.ts';
import { notApplicable, type JudgedWell, type Verdict } from '../rule.ts';

/** Judges a well by the results of its water samples, where they are handed in. */
export function judgeSampled(
  { record, results }: JudgedWell,
  judge: (results: WaterResults) => Verdict,
): Verdict {
  if (!results) return notApplicable;
  const told = (record.quality ?? []).length === 0 ? undefined : results;
  return askedOf(record, told, { what: 'waterSample', path: 'quality' }, judge);
}
