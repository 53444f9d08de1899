import type { RecordPath } from '../base/recordPath.ts';
import type { Metres } from '../base/units.ts';
import type { HeldFigure, InLanguages, Source } from '../practice/practice.ts';
import type { Surrounding } from '../record/site.ts';
import type { AssumptionId } from './assumptions.ts';
import type { CautionCode } from './disinfection/cautions.ts';
import type { BandId, HeldValue, ParameterId } from './guidelines/guidelineSet.ts';
import type { ConversionCode } from './quality/conversionCodes.ts';
import type { NoteCode } from './quality/noteCodes.ts';
import type { Interval } from './interval.ts';
import type { Reckoned } from './reckoned.ts';
import type { GroundClass } from './siting/groundClasses.ts';
import type { MissingForEstimate } from './siting/missing.ts';

/**
 * How a result stands to a guideline value. No state says that water may be drunk.
 * `limitTooHigh`: below a detection limit that lies past the value or was not written, so that
 * nothing is told;
 * `unitUnknown`: its unit is absent or cannot be converted; `formUnknown`: as nitrate or as
 * nitrogen was not written, and it matters.
 */
export const valueStates = [
  'above',
  'below',
  'limitTooHigh',
  'formUnknown',
  'unitUnknown',
  'notTested',
  'within',
] as const;
export type ValueState = (typeof valueStates)[number];

/** A result of the record in the unit and form of the guideline set. */
export interface Reading {
  readonly path: RecordPath;
  /** Index of its sample. */
  readonly sample: number;
  readonly at?: string;
  /** As it was written. */
  readonly written: {
    readonly parameter: string;
    readonly value?: number;
    readonly unit?: string;
    readonly as?: string;
  };
  /** Below the detection limit that stands as value. */
  readonly below: boolean;
  /** Converted. Absent where it cannot be, or where its form is not known. */
  readonly value?: number;
  /** What it may be, converted: several where the form was not written, none where it cannot be. */
  readonly possible: readonly number[];
  /** How it was read and converted. */
  readonly conversions: readonly ConversionCode[];
}

/** A guideline value and how the last reading stands to it. */
export interface Comparison {
  readonly value: HeldValue;
  readonly state: ValueState;
}

/** Last against first; `unclear` where detection limits leave it open. */
export const directions = ['up', 'down', 'same', 'unclear'] as const;
export type Direction = (typeof directions)[number];

/** A parameter over repeated samples, in order of time; no statistics. */
export interface Trend {
  readonly first: Reading;
  readonly last: Reading;
  readonly count: number;
  readonly direction: Direction;
  /** Three readings or more that all went the same way. */
  readonly steady: boolean;
}

/** A parameter of the set, as the record stands to it. */
export interface ParameterResult {
  readonly parameter: ParameterId;
  readonly name: InLanguages;
  /** In which its values are told. */
  readonly unit: string;
  readonly as?: string;
  /** Of the last sample in which it was looked for; of several there, the one that stands worst. */
  readonly last?: Reading;
  /** Every reading, those without a day first, then by time. */
  readonly readings: readonly Reading[];
  readonly comparisons: readonly Comparison[];
  /** The worst of its health values, and of all others; absent where it has none of that kind. */
  readonly health?: ValueState;
  readonly use?: ValueState;
  /** A place in an order, for ranking wells; it passes nothing. */
  readonly band?: BandId;
  readonly trend?: Trend;
  /** The set asks for it before handover, and nobody looked. */
  readonly missingBeforeHandover: boolean;
}

/** A result whose parameter the set does not know. */
export interface UnknownResult {
  readonly path: RecordPath;
  readonly written: string;
}

/** A remark on a sample: its age, its day, where it was measured. */
export interface QualityNote {
  readonly code: NoteCode;
  readonly path: RecordPath;
  readonly parameter?: ParameterId;
  readonly values: Readonly<Record<string, number>>;
}

/** Nitrate and nitrite together: each as a share of its value, summed; 1 at most. */
export interface NitrogenRatio {
  readonly sample: number;
  readonly ratio: Reckoned;
  readonly state: Extract<ValueState, 'within' | 'above' | 'limitTooHigh' | 'formUnknown'>;
}

export const balanceStates = ['good', 'fair', 'poor', 'unclear'] as const;
export type BalanceState = (typeof balanceStates)[number];

/** Whether the charges of the major ions of a sample balance. */
export interface IonBalance {
  readonly sample: number;
  readonly cations: Reckoned;
  readonly anions: Reckoned;
  /** Positive where cations outweigh. */
  readonly error: Reckoned;
  /** Ions that were counted, and major ones that nobody measured. */
  readonly used: readonly ParameterId[];
  readonly lacking: readonly ParameterId[];
  /** Good to 5 %, fair to 10 %; unclear where detection limits leave it open. */
  readonly state: BalanceState;
}

/** What the samples of a well tell beside a set of guideline values. */
export interface QualityResult {
  readonly set: { readonly id: string; readonly version: string; readonly name: InLanguages };
  readonly samples: number;
  /** Every parameter of the set, in its order. */
  readonly parameters: readonly ParameterResult[];
  readonly unknown: readonly UnknownResult[];
  readonly nitrogen?: NitrogenRatio;
  readonly ionBalance?: IonBalance;
  /** From calcium and magnesium of one sample, the last that has both. */
  readonly hardness?: { readonly sample: number; readonly mgL: Reckoned };
  /** From electrical conductivity, where the last sample has no dissolved solids. */
  readonly solids?: {
    readonly sample: number;
    readonly mgL: Reckoned;
    readonly middleMgL: number;
    readonly band?: BandId;
  };
  readonly missingBeforeHandover: readonly ParameterId[];
  readonly notes: readonly QualityNote[];
}

/** What an estimate could not be made for, and where the record would tell it. */
export interface MissingInput<What extends string> {
  readonly what: What;
  readonly path: RecordPath;
}

/** Days that water may take from what could foul it to the well: an order of size, no proof. */
export interface TravelTime {
  readonly path: RecordPath;
  readonly kind: Surrounding['kind'];
  readonly ground?: GroundClass;
  readonly days: Reckoned;
  /** Against each reference, in days: all shorter, on both sides, all longer. */
  readonly references: readonly {
    readonly days: number;
    readonly stands: 'shorter' | 'spans' | 'longer';
    readonly source: Source;
  }[];
  readonly assumptions: readonly AssumptionId[];
}

export interface TravelTimes {
  readonly times: readonly TravelTime[];
  readonly missing: readonly MissingInput<MissingForEstimate>[];
}

/** A surrounding, metres east and north of the well. */
export interface PlacedSurrounding {
  readonly path: RecordPath;
  readonly kind: Surrounding['kind'];
  readonly slope?: Surrounding['slope'];
  readonly distanceM: Metres;
  readonly directionDegrees: number;
  readonly eastM: number;
  readonly northM: number;
}

/** What stands round the well, for a plan with north up. */
export interface SitingPlan {
  readonly placed: readonly PlacedSurrounding[];
  /** At a known distance, nobody wrote in which direction. */
  readonly withoutDirection: readonly {
    readonly path: RecordPath;
    readonly kind: Surrounding['kind'];
    readonly distanceM: Metres;
  }[];
  /** Named, and nobody wrote how far. */
  readonly withoutDistance: readonly {
    readonly path: RecordPath;
    readonly kind: Surrounding['kind'];
  }[];
  /** Half the side of the square round the well that holds all that is placed; absent for none. */
  readonly reachM?: Metres;
}

/** What a dose could not be reckoned without. */
export const missingForDosing = [
  'restLevel',
  'pipeInside',
  'hole',
  'packSizes',
  'riser',
  'rate',
] as const;
export type MissingForDosing = (typeof missingForDosing)[number];

/** A disinfection with chlorine, step by step. */
export interface DisinfectionPlan {
  readonly product: 'granules' | 'liquid';
  readonly doseMgL: number;
  readonly strengthPercent: number;
  /** In the order of work. */
  readonly reckoned: readonly Reckoned[];
  readonly missing: readonly MissingInput<MissingForDosing>[];
  /** At least as the practice says; overnight is better. */
  readonly contactH: { readonly least: HeldFigure; readonly advised: Interval };
  /** Bacteria are sampled this many days after pumping off, with no more chlorine than this. */
  readonly resample: { readonly waitDays: HeldFigure; readonly chlorineMgL: HeldFigure };
  readonly assumptions: readonly AssumptionId[];
  readonly cautions: readonly CautionCode[];
}
