import type { DepthM, Metres } from '../../../base/units.ts';
import { monthsIntoYear, shareOverLowest } from './yearlySwing.ts';

/** What an estimate of the dry season's level rests on; each is to be said beside it. */
export const dryAssumptionCodes = [
  'swingAsGiven',
  'waveBetweenLows',
  'readAtLow',
  'readAtHigh',
  'yearsAlike',
] as const;
export type DryAssumptionCode = (typeof dryAssumptionCodes)[number];

export interface SeasonInputs {
  /** Between the highest and the lowest rest level of a year. */
  readonly swingM: Metres;
  /** Months in which the level is at its lowest, 1 to 12. */
  readonly lowMonths?: readonly number[];
}

export interface DryEstimate {
  /** Rest level to be expected at its lowest. */
  readonly levelM: DepthM;
  /** The same if the level that was read were the year's highest: no estimate lies deeper. */
  readonly deepestM: DepthM;
  readonly assumptions: readonly DryAssumptionCode[];
}

/**
 * Rest level at the lowest of the year, from one that was read and the swing that people there
 * tell. Where the day or the months of low are not known, what was read counts as the highest, so
 * that the estimate errs on the deep side. Years with little rain go deeper than any of it.
 */
export function dryEstimate(
  restM: DepthM,
  at: string | undefined,
  { swingM, lowMonths = [] }: SeasonInputs,
): DryEstimate {
  const position = at === undefined ? undefined : monthsIntoYear(at);
  const share = position === undefined ? undefined : shareOverLowest(position, lowMonths);
  const deepestM = restM + swingM;
  const how = share === undefined ? 'readAtHigh' : share === 0 ? 'readAtLow' : 'waveBetweenLows';
  return {
    levelM: restM + (share ?? 1) * swingM,
    deepestM,
    assumptions: ['swingAsGiven', how, 'yearsAlike'],
  };
}
