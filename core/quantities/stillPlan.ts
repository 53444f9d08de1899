import type { WellRecord } from '../record/schema.ts';

/** Not built yet: what the record does not tell may still be taken from the practice. */
export function isStillPlan({ identity }: WellRecord): boolean {
  const { state } = identity ?? {};
  return state === undefined || state === 'laidOut' || state === 'drilled';
}

/** People draw from it, or will. */
export function isForUse({ identity }: WellRecord): boolean {
  return identity?.state !== 'dry' && identity?.state !== 'abandonedAndSealed';
}
