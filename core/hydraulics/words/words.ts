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
  SeriesNoteCode,
  SourceId,
} from '../codes.ts';

/** What a check says where its condition is met, and where it is not. */
export interface CheckWords {
  readonly holds: string;
  readonly fails: string;
}

/**
 * What analyses of pumping tests say in one language. `{name}` stands for a value; its unit is
 * written beside it. A language that lacks a text does not compile.
 */
export interface HydraulicsWords {
  readonly methods: Readonly<Record<MethodId, string>>;
  readonly quantities: Readonly<Record<QuantityId, string>>;
  /** How an interval was come by, after `95 %, `. */
  readonly bases: Readonly<Record<IntervalBasis, string>>;
  /** Why a reading was left out. */
  readonly leftOut: Readonly<Record<LeftOutCode, string>>;
  /** What is said at the row of a reading, or of a series as a whole. */
  readonly seriesNotes: Readonly<Record<SeriesNoteCode, string>>;
  /** What is lacking, as in a list. */
  readonly missing: Readonly<Record<MissingCode, string>>;
  readonly checks: Readonly<Record<CheckCode, CheckWords>>;
  readonly hints: Readonly<Record<HintCode, string>>;
  readonly assumptions: Readonly<Record<AssumptionCode, string>>;
  readonly limits: Readonly<Record<LimitCode, string>>;
  readonly sources: Readonly<Record<SourceId, string>>;
}
