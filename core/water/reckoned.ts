import type { RecordPath } from '../base/recordPath.ts';
import type { FigureId } from '../practice/figures.ts';
import type { Source } from '../practice/practice.ts';
import type { AssumptionId } from './assumptions.ts';
import type { Interval } from './interval.ts';

export type { Interval } from './interval.ts';

/** What is reckoned about the water, each with its unit as printed; `1` is a plain number. */
export const reckonedUnits = {
  nitrogenRatio: '1',
  hardnessMgL: 'mg/l',
  dissolvedSolidsMgL: 'mg/l',
  cationsMeqL: 'meq/l',
  anionsMeqL: 'meq/l',
  ionErrorPercent: '%',
  travelDays: 'd',
  pipeWaterLitres: 'l',
  holeWaterLitres: 'l',
  packWaterLitres: 'l',
  riserWaterLitres: 'l',
  waterLitres: 'l',
  productG: 'g',
  productMl: 'ml',
  teaspoons: '1',
  tablespoons: '1',
  stockLitres: 'l',
  washProductG: 'g',
  pumpOffLitres: 'l',
  pumpOffMinutes: 'min',
} as const satisfies Record<string, string>;
export type ReckonedId = keyof typeof reckonedUnits;
export type ReckonedUnit = (typeof reckonedUnits)[ReckonedId];

/** Where the value of an input comes from; `model` is the well as it is resolved from the record. */
export type InputFrom =
  | { readonly figure: FigureId }
  | { readonly path: RecordPath }
  | { readonly reckoned: ReckonedId }
  | { readonly assumed: AssumptionId }
  | 'asked'
  | 'model'
  | 'guideline'
  | 'chemistry';

/** An input of a formula, and where it comes from. */
export interface ReckonedInput {
  /** As the formula writes it. */
  readonly symbol: string;
  readonly value: Interval;
  /** As printed: `mg/l`, `m/d`; `1` for a plain number. */
  readonly unit: string;
  readonly from: InputFrom;
}

/** A figure with how it was found. */
export interface Reckoned {
  readonly id: ReckonedId;
  readonly value: Interval;
  readonly unit: ReckonedUnit;
  /** Plain text, as in `t = d · n / (K · i)`; `Σ` sums over what is counted by `ᵢ`. */
  readonly formula: string;
  readonly inputs: readonly ReckonedInput[];
  /** Where the formula comes from; assumed inputs have their own sources. */
  readonly source: Source;
}
