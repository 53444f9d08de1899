import type { UsedReadings } from '../../../hydraulics/results.ts';
import type { PumpingTest } from '../../../record/water.ts';

/** The words of the pages of pumping tests besides those of the analyses, in one language. */
export interface TestWords {
  /** In the title block. */
  readonly document: string;
  /** On what the pages are, and what they are not. */
  readonly reservation: string;
  /** Behind each the number of the test. */
  readonly kinds: Readonly<Record<PumpingTest['kind'], string>>;
  /** `{method}` of the residuals. */
  readonly plots: Readonly<
    Record<
      'linear' | 'residual' | 'semiLog' | 'recovery' | 'logLog' | 'steps' | 'residuals',
      string
    >
  >;
  /** Titles of axes with their units. */
  readonly axes: Readonly<
    Record<
      | 'time'
      | 'superposed'
      | 'sinceStop'
      | 'ratio'
      | 'drawdown'
      | 'residual'
      | 'both'
      | 'rate'
      | 'perRate'
      | 'offMm'
      | 'offPerRate',
      string
    >
  >;
  readonly key: Readonly<
    Record<'readings' | 'used' | 'others' | 'line' | 'curve' | 'derivative' | 'window', string>
  >;
  readonly facts: Readonly<
    Record<
      | 'title'
      | 'started'
      | 'rates'
      | 'pumped'
      | 'rest'
      | 'readings'
      | 'leftOut'
      | 'storage'
      | 'derivative'
      | 'missing'
      | 'deepest',
      string
    >
  >;
  /** How the derivative was come by; `{smoothing}` is L in ln t. */
  readonly smoothed: string;
  readonly heads: Readonly<Record<'quantity' | 'value' | 'interval', string>>;
  /** `{from}`, `{to}`, `{count}` and `{chosen}` of what a method went by. */
  readonly used: string;
  /** The same of the last reading alone, at `{to}`. */
  readonly usedLast: string;
  readonly chosen: Readonly<Record<Exclude<UsedReadings['chosen'], 'last'>, string>>;
  readonly intervalBy: string;
  readonly notMet: string;
  readonly source: string;
  readonly assumptions: string;
  readonly assumptionsByTest: string;
  readonly safe: Readonly<
    Record<
      | 'title'
      | 'quantity'
      | 'dryLevel'
      | 'deepestLevel'
      | 'available'
      | 'tested'
      | 'atRate'
      | 'missing'
      | 'caution',
      string
    >
  >;
}
