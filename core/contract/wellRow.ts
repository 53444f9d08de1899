import type { WellState } from '../record/identity.ts';

/** One line of the archive's list of wells. */
export interface WellRow {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly district: string;
  readonly village: string;
  readonly state: WellState | '';
  /** Deepest point, metres below ground; absent when not known. */
  readonly depthM?: number;
  readonly revision: number;
  /** Something was typed that is in no revision yet; the row shows it already. */
  readonly unrevised: boolean;
  /** ISO 8601 moment of the last change. */
  readonly changedAt: string;
}
