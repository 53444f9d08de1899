import type { CriterionId, CriterionState, DevelopmentMissing } from '../developmentSeries.ts';
import type { DryAssumptionCode } from '../../../practice/reading/season/dryEstimate.ts';
import type { DryBy } from '../seasonLevels.ts';

/** What levels and development say in one language. */
export interface LevelWords {
  /** What an estimate rests on, a sentence each. */
  readonly assumptions: Readonly<Record<DryAssumptionCode, string>>;
  readonly dryBy: Readonly<Record<DryBy, string>>;
  readonly criteria: Readonly<Record<CriterionId, string>>;
  readonly states: Readonly<Record<CriterionState, string>>;
  /** What is lacking, as in a list. */
  readonly missing: Readonly<Record<DevelopmentMissing, string>>;
  /** Names of the totals and series. */
  readonly names: Readonly<
    Record<
      | 'hours'
      | 'pumped'
      | 'boreVolume'
      | 'boreVolumes'
      | 'turbidity'
      | 'sand'
      | 'end'
      | 'restLevel'
      | 'dryRestLevel'
      | 'pumpingLevel'
      | 'dryPumpingLevel'
      | 'seenSwing'
      | 'atLeast',
      string
    >
  >;
}
