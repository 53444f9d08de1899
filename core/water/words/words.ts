import type { AssumptionId } from '../assumptions.ts';
import type { CautionCode } from '../disinfection/cautions.ts';
import type { BandId, Basis, Condition, Purpose } from '../guidelines/guidelineSet.ts';
import type { ConversionCode } from '../quality/conversionCodes.ts';
import type { NoteCode } from '../quality/noteCodes.ts';
import type { ReckonedId } from '../reckoned.ts';
import type {
  BalanceState,
  Direction,
  MissingForDosing,
  TravelTime,
  ValueState,
} from '../results.ts';
import type { GroundClass } from '../siting/groundClasses.ts';
import type { MissingForEstimate } from '../siting/missing.ts';

/** Samples beside guideline values. */
export interface QualityWords {
  readonly states: Readonly<Record<ValueState, string>>;
  readonly bases: Readonly<Record<Basis, string>>;
  readonly purposes: Readonly<Record<Purpose, string>>;
  readonly conditions: Readonly<Record<Condition, string>>;
  readonly bands: Readonly<Record<BandId, string>>;
  readonly conversions: Readonly<Record<ConversionCode, string>>;
  readonly directions: Readonly<Record<Direction, string>>;
  /** Behind a direction, where every step went that way. */
  readonly steadily: string;
  readonly balance: Readonly<Record<BalanceState, string>>;
  /** Sentences; `{name}` stands for a value of the note. */
  readonly notes: Readonly<Record<NoteCode, string>>;
  /** Above everything that samples tell. */
  readonly reservation: string;
  /** Beside a band of bacteria. */
  readonly bandReservation: string;
}

/** How long germs may be on their way. */
export interface SitingWords {
  readonly ground: Readonly<Record<GroundClass, string>>;
  readonly stands: Readonly<Record<TravelTime['references'][number]['stands'], string>>;
  readonly missing: Readonly<Record<MissingForEstimate, string>>;
  readonly reservation: string;
}

/** Chlorine in the well. */
export interface DisinfectionWords {
  readonly missing: Readonly<Record<MissingForDosing, string>>;
  readonly cautions: Readonly<Record<CautionCode, string>>;
  /** `{leastH}`, `{fromH}` and `{toH}` are hours. */
  readonly contact: string;
  /** `{waitDays}` are days, `{chlorineMgL}` is free chlorine. */
  readonly resample: string;
  readonly reservation: string;
}

/** All words of one language. A language that lacks one does not compile. */
export interface WaterWords {
  readonly quality: QualityWords;
  readonly siting: SitingWords;
  readonly disinfection: DisinfectionWords;
  readonly reckoned: Readonly<Record<ReckonedId, string>>;
  readonly assumptions: Readonly<Record<AssumptionId, string>>;
}
