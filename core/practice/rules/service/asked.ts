import type { WellRecord } from '../../../record/schema.ts';
import { notApplicable, unjudged, type Missing, type Verdict } from '../rule.ts';
import { missingState, stageOf } from '../stage.ts';

/**
 * What a rule says that needs a part of the record: of a completed well the part is asked for, of
 * one on its way it is judged where it is written already, and of a closed one nothing is said.
 */
export function askedOf<T>(
  record: WellRecord,
  part: T | undefined,
  missing: Missing,
  judge: (part: T) => Verdict,
): Verdict {
  const stage = stageOf(record);
  if (stage === 'closed') return notApplicable;
  if (part !== undefined) return judge(part);
  if (stage === 'coming') return notApplicable;
  return unjudged(stage === 'unknown' ? missingState : missing);
}
