import type { WellRecord } from '../../record/schema.ts';
import type { Missing } from './rule.ts';

/**
 * How far a well has come, as rules on what stands above ground and on its water ask for it:
 * `serves` is completed, `coming` is laid out or drilled, `closed` will give no water.
 */
export type Stage = 'coming' | 'serves' | 'closed' | 'unknown';

export function stageOf({ identity }: WellRecord): Stage {
  switch (identity?.state) {
    case undefined:
      return 'unknown';
    case 'laidOut':
    case 'drilled':
      return 'coming';
    case 'completed':
      return 'serves';
    case 'dry':
    case 'abandonedAndSealed':
    case 'decommissioned':
      return 'closed';
  }
}

/** What a rule misses that asks a completed well for something, where nobody wrote the state. */
export const missingState: Missing = { what: 'state', path: 'identity.state' };

/** False for a hole that was given up: what stands round its pipes no longer serves a screen. */
export function givesWater(record: WellRecord): boolean {
  return stageOf(record) !== 'closed';
}
