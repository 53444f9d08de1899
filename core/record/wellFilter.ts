import type { DrillingMethod } from './bore.ts';
import type { PumpKind } from './headworks.ts';
import type { WellState } from './identity.ts';

/** What weighs most of a well's findings: something wrong, something to look at, or neither. */
export const worstFindings = ['wrong', 'look', 'none'] as const;
export type WorstFinding = (typeof worstFindings)[number];

/** What the list can be put in order by. */
export const orders = [
  'number',
  'name',
  'village',
  'district',
  'state',
  'year',
  'depth',
  'findings',
  'changed',
] as const;
export type OrderBy = (typeof orders)[number];

export interface ListOrder {
  readonly by: OrderBy;
  /** From the last to the first; what is not known stays at the end. */
  readonly down?: boolean;
}

/** Which wells are wanted: those that fit every part that is there. */
export interface WellFilter {
  /** Every word begins a word of number, name, places, people, remarks or log. */
  readonly search?: string;
  /** Any of these; an empty text stands for wells where nothing was written. */
  readonly regions?: readonly string[];
  readonly districts?: readonly string[];
  readonly states?: readonly (WellState | '')[];
  /** Year of drilling, both ends counted. */
  readonly yearFrom?: number;
  readonly yearTo?: number;
  readonly findings?: readonly WorstFinding[];
  /** Depth of the hole, metres, both ends counted; a well without a known one fits none. */
  readonly depthFrom?: number;
  readonly depthTo?: number;
  /** What the well gave when it was pumped, cubic metres an hour, as with depths. */
  readonly yieldFrom?: number;
  readonly yieldTo?: number;
  readonly methods?: readonly (DrillingMethod | '')[];
  readonly pumps?: readonly (PumpKind | '')[];
  readonly clients?: readonly string[];
  readonly contractors?: readonly string[];
}
