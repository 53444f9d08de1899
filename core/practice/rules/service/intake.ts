import type { DepthM } from '../../../base/units.ts';
import { notApplicable, type JudgedWell, type Verdict } from '../rule.ts';
import { askedOf } from './asked.ts';

/** Judges a well by its pump's intake; one whose water is lifted by a bucket has none. */
export function judgeIntake(
  { record, model }: JudgedWell,
  judge: (intakeM: DepthM) => Verdict,
): Verdict {
  if (record.pump?.kind === 'bucketAndWindlass') return notApplicable;
  const missing = { what: 'pumpIntake', path: 'pump.intake' } as const;
  return askedOf(record, model.pump?.intakeM, missing, judge);
}
