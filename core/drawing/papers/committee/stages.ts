import type { WellRecord } from '../../../record/schema.ts';

/** States of a hole that nobody draws from. */
export const closedStates = ['dry', 'abandonedAndSealed', 'decommissioned'] as const;
export type ClosedState = (typeof closedStates)[number];

/** The state in which nobody draws water; undefined of a well that serves or is to serve. */
export function closedState({ identity }: WellRecord): ClosedState | undefined {
  return closedStates.find((one) => one === identity?.state);
}

/** What the sheet says above all else: that a well is closed, planned, or not finished. */
export function bannerState(record: WellRecord): ClosedState | 'laidOut' | 'drilled' | undefined {
  const state = record.identity?.state;
  return state === 'laidOut' || state === 'drilled' ? state : closedState(record);
}
