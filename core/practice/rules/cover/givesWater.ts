import type { WellRecord } from '../../../record/schema.ts';
import type { WellState } from '../../../record/identity.ts';

const given: readonly (WellState | undefined)[] = ['dry', 'abandonedAndSealed', 'decommissioned'];

/** False for a hole that was given up: what stands round its pipes no longer serves a screen. */
export function givesWater({ identity }: WellRecord): boolean {
  return !given.includes(identity?.state);
}
