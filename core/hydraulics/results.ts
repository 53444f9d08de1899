import type { RecordPath } from '../base/recordPath.ts';
import type { DepthM, Metres } from '../base/units.ts';
import type { PumpingTest } from '../record/water.ts';
import type {
  AssumptionCode,
  CheckCode,
  HintCode,
  IntervalBasis,
  LeftOutCode,
  LimitCode,
  MethodId,
  MissingCode,
  QuantityId,
  SourceId,
} from './codes.ts';

/** What pumping tests say. Nothing here is text: codes and values, whose words are in `words/`. */

export type Minutes = number;
/** Cubic metres a day. */
export type M3PerDay = number;
/** Square metres a day. */
export type M2PerDay = number;

/** A code with the values that its sentence names. */
export interface Said<Code extends string> {
  readonly code: Code;
  readonly values: Readonly<Record<string, number>>;
}

/** Where the true value lies with the probability `level` (0.95), by the basis that is named. */
export interface Interval {
  readonly lowest: number;
  /** Absent where the readings set no upper bound. */
  readonly highest?: number;
  readonly level: number;
  readonly basis: IntervalBasis;
}

/** A value with its unit as printed, `1` for a plain number. No interval: none can be given. */
export interface Estimate {
  readonly id: QuantityId;
  readonly value: number;
  readonly unit: string;
  readonly interval?: Interval;
}

/** A reading reduced to a drawdown. */
export interface TestReading {
  readonly path: RecordPath;
  /** Since pumping began; of a recovery, since it stopped. */
  readonly minutes: Minutes;
  /** Below the rest level; of a recovery, the residual drawdown. */
  readonly drawdownM: Metres;
  /** Water level below ground, where the tape's datum could be brought to the ground. */
  readonly depthM?: DepthM;
  /** What was pumped then; of a recovery, before it. */
  readonly rateM3d?: M3PerDay;
  /** From 1; the minutes are since that step began. */
  readonly step?: { readonly number: number; readonly minutes: Minutes };
  /** Of a recovery: time since pumping began over time since it stopped, t/t′. */
  readonly timeRatio?: number;
}

/** A reading of the record that no method used, and why. */
export interface LeftOut {
  readonly path: RecordPath;
  readonly why: LeftOutCode;
  readonly minutes?: Minutes;
}

/** A change of the pumping rate; minutes since pumping began. */
export interface RateChange {
  readonly fromMin: Minutes;
  readonly rateM3d: M3PerDay;
}

/** Readings that a method went by. The minutes count as those of the readings do. */
export interface UsedReadings {
  readonly fromMin: Minutes;
  readonly toMin: Minutes;
  readonly count: number;
  readonly chosen: 'automatic' | 'byHand' | 'all' | 'stepEnds' | 'last';
}

/** Whether a condition of the method is met. */
export interface Check extends Said<CheckCode> {
  readonly holds: boolean;
}

/** A reading beside what the method makes of it. */
export interface FittedPoint {
  readonly minutes: Minutes;
  /** On the axis of the method: log10 of time or of t/t′, superposed; of a step test, Q in m³/d. */
  readonly x: number;
  /** Metres; of a step test by s/Q, days a square metre. */
  readonly read: number;
  readonly fitted: number;
}

/** A straight line over the axis of a method: `at0 + slope · x`. */
export interface Line {
  readonly slope: number;
  readonly at0: number;
  /** Share of the scatter that the line explains, 0 to 1. */
  readonly r2?: number;
}

/** The curve of a fit, `Σ ΔQ W(term/(t − tᵢ)) / 4πT`. */
export interface Curve {
  readonly transmissivityM2d: M2PerDay;
  /** r² S / 4T, days. */
  readonly termD: number;
}

/** What one method makes of a test. */
export interface MethodResult {
  readonly method: MethodId;
  readonly estimates: readonly Estimate[];
  readonly used: UsedReadings;
  /** In order of time; read less fitted is the residual. */
  readonly points: readonly FittedPoint[];
  /** Root mean square of the residuals, metres. */
  readonly rmsM?: Metres;
  readonly line?: Line;
  readonly curve?: Curve;
  readonly checks: readonly Check[];
  readonly source: SourceId;
  readonly assumptions: readonly Said<AssumptionCode>[];
}

/** Slope of the drawdown over the natural logarithm of time, metres. */
export interface DerivativePoint {
  readonly minutes: Minutes;
  readonly derivativeM: Metres;
}

export interface Derivative {
  readonly points: readonly DerivativePoint[];
  /** L of Bourdet: least distance of the neighbours gone by, in ln t. */
  readonly smoothing: number;
  readonly source: SourceId;
}

/** What the shape of the drawdown may come from: a hint to look at, never a result. */
export interface Hint extends Said<HintCode> {
  readonly fromMin: Minutes;
  readonly toMin: Minutes;
}

/** What the record would have to tell for more, and where. */
export interface MissingForTest {
  readonly what: MissingCode;
  readonly path: RecordPath;
}

/** One test of the record, reduced and analysed by every method that it allows. */
export interface TestAnalysis {
  readonly index: number;
  readonly path: RecordPath;
  readonly kind: PumpingTest['kind'];
  readonly startedAt?: string;
  /** Rest level by the tape's own datum, metres. */
  readonly restReadM?: Metres;
  readonly restDepthM?: DepthM;
  /** Of all readings, those that could be reduced, in order of time. */
  readonly readings: readonly TestReading[];
  readonly leftOut: readonly LeftOut[];
  /** In order of time; of a recovery, the pumping before it. */
  readonly rates: readonly RateChange[];
  readonly pumpedMin?: Minutes;
  /** Readings before it are masked: the water came out of the casing. */
  readonly casingStorageMin?: Minutes;
  readonly results: readonly MethodResult[];
  readonly derivative?: Derivative;
  readonly hints: readonly Hint[];
  readonly missing: readonly MissingForTest[];
}

/** Minutes, both ends included, that a person chose for the straight part of a test. */
export interface HandWindow {
  readonly fromMin: Minutes;
  readonly toMin: Minutes;
}

/** What a person chose instead of the automatic way. */
export interface AnalysisChoices {
  /** By index of the test in the record. */
  readonly windows?: Readonly<Record<number, HandWindow>>;
  /** L of the derivative, in ln t. */
  readonly smoothing?: number;
}

/** Margins of the practice and what the well is asked for. */
export interface SafeRateInputs {
  /** Water over the intake while pumping. */
  readonly waterOverIntakeM: Metres;
  /** Water over the top of the screen while pumping. */
  readonly waterOverScreenM: Metres;
  /** Rate that the well is asked for, cubic metres an hour. */
  readonly askedM3h?: number;
  readonly drySeasonLevelM?: DepthM;
  /** It was estimated from the swing of the year; else somebody said it. */
  readonly drySeasonEstimated?: boolean;
  /** Depth of the intake as set or planned. */
  readonly intakeM?: DepthM;
  /** 24 where absent. */
  readonly hoursADay?: number;
  /** 365 where absent. */
  readonly days?: number;
}

/** What the well stands in the dry season after the days of pumping. */
export interface SafeRate {
  readonly drySeasonLevelM: DepthM;
  /** Deepest that the pumping level may come, and what sets it. */
  readonly deepestLevelM: DepthM;
  readonly setBy: LimitCode;
  readonly availableM: Metres;
  /** Rate at which the available drawdown is used up, m³/h. */
  readonly byDrawdown: Estimate;
  /** Highest rate that a test was made at, m³/h. */
  readonly testedM3h: number;
  /** The lower of both: no test tells what lies above the tested rate. */
  readonly safe: Estimate;
  /** At the rate asked for, or at the safe rate where none is. */
  readonly atRate: {
    readonly rateM3h: number;
    readonly drawdown: Estimate;
    /** Pumping level below ground. */
    readonly pumpingLevel: Estimate;
    /** Least depth of the intake. */
    readonly intake: Estimate;
  };
  readonly checks: readonly Check[];
  readonly assumptions: readonly Said<AssumptionCode>[];
  readonly sources: readonly SourceId[];
}

/** A safe rate, or what is missing for one. */
export type SafeRateAnswer =
  | { readonly known: true; readonly value: SafeRate }
  | { readonly known: false; readonly missing: readonly MissingForTest[] };
