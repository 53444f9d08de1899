import type { Interval, M2PerDay, TestAnalysis } from './results.ts';
import { intervalLevel } from './special/studentT.ts';

/** Transmissivity by all methods of all tests; methods that are a rule of thumb are left out. */
export interface AcrossMethods {
  /** Each method's value, the least first. */
  readonly values: readonly M2PerDay[];
  /** From the lowest to the highest end of their intervals. */
  readonly interval: Interval;
}

/**
 * How far the methods lie apart, which mostly tells more of what is not known than the scatter of
 * any one. Undefined where no method gave a transmissivity.
 */
export function transmissivityAcross(analyses: readonly TestAnalysis[]): AcrossMethods | undefined {
  const found = analyses
    .flatMap(({ results }) => results)
    .flatMap(({ estimates }) => estimates)
    .filter(({ id, interval }) => id === 'transmissivity' && interval?.basis !== 'spread');
  if (found.length === 0) return undefined;
  const highs = found.map(({ value, interval }) => (interval ? interval.highest : value));
  const highest = highs.every((high) => high !== undefined) && { highest: Math.max(...highs) };
  return {
    values: found.map(({ value }) => value).sort((a, b) => a - b),
    interval: {
      lowest: Math.min(...found.map(({ value, interval }) => interval?.lowest ?? value)),
      ...(highest || {}),
      level: intervalLevel,
      basis: 'worstCase',
    },
  };
}
