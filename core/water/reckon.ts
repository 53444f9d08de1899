import type { RecordPath } from '../base/recordPath.ts';
import type { Source } from '../practice/practice.ts';
import { assumptions, type AssumptionId } from './assumptions.ts';
import type { Interval } from './interval.ts';
import { reckonedUnits, type Reckoned, type ReckonedId, type ReckonedInput } from './reckoned.ts';

/** A figure without width. */
export function exactly(value: number): Interval {
  return { least: value, most: value };
}

export function sumOf(intervals: readonly Interval[]): Interval {
  return {
    least: intervals.reduce((sum, { least }) => sum + least, 0),
    most: intervals.reduce((sum, { most }) => sum + most, 0),
  };
}

/** An interval times a figure from 0 up. */
export function scaled({ least, most }: Interval, factor: number): Interval {
  return { least: least * factor, most: most * factor };
}

export function reckoned(
  id: ReckonedId,
  value: Interval,
  formula: string,
  inputs: readonly ReckonedInput[],
  source: Source,
): Reckoned {
  return { id, value, unit: reckonedUnits[id], formula, inputs, source };
}

/** An input as it stands in the record. */
export function fromRecord(
  symbol: string,
  value: Interval,
  unit: string,
  path: RecordPath,
): ReckonedInput {
  return { symbol, value, unit, from: { path } };
}

/** Assumptions that are a figure. */
export type AssumedFigure = {
  [Id in AssumptionId]: (typeof assumptions)[Id] extends { value: Interval } ? Id : never;
}[AssumptionId];

/** An input that nobody wrote, taken as customary. */
export function fromAssumption(symbol: string, id: AssumedFigure): ReckonedInput {
  const { value, unit } = assumptions[id];
  return { symbol, value, unit, from: { assumed: id } };
}

/** Another figure as input. */
export function fromReckoned(symbol: string, { id, value, unit }: Reckoned): ReckonedInput {
  return { symbol, value, unit, from: { reckoned: id } };
}

const lowered = '₀₁₂₃₄₅₆₇₈₉';

/** A symbol that counts: `V` and 12 become `V₁₂`. */
export function counted(symbol: string, nth: number): string {
  return symbol + [...String(nth)].map((digit) => lowered[Number(digit)]).join('');
}
