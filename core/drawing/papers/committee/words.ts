import type { Language } from '../../../base/language.ts';
import type { PumpPartId } from '../../../water/pump/pumpKind.ts';
import type { CareTask, CarePlan } from './care.ts';
import type { Distance } from './distances.ts';
import type { ClosedState } from './stages.ts';

/** A state that the whole sheet is under, in two lines. */
export interface Banner {
  readonly says: string;
  readonly more: string;
}

/** How the yield is known; `{day}` is filled in. */
export type YieldBasis = 'safe' | 'tested' | 'pump' | 'planned';

/**
 * Words of the committee sheet in one language, in short sentences for people who do not build
 * wells; `{…}` are filled in. None of them says that water may be drunk.
 */
export interface CommitteeWords {
  readonly language: Language;
  /** The way that lines run; what stands left and right of a sheet follows it. */
  readonly direction: 'ltr' | 'rtl';
  readonly title: string;
  readonly wellNumber: string;
  readonly village: string;
  /** From which `{day}` and `{revision}` the sheet is. */
  readonly made: string;
  /** The same of a record without a revision. */
  readonly madeLoose: string;
  readonly months: readonly string[];
  /** `{day}`, `{month}`, `{year}`; the first of a month may be said in another way. */
  readonly day: string;
  readonly firstDay: string;
  /** For a narrow place: `{number}` is the month's, `{short}` its first three letters. */
  readonly shortDay: string;
  readonly banners: Readonly<Record<ClosedState | 'laidOut' | 'drilled', Banner>>;
  readonly picture: Readonly<Record<'water' | 'gravel' | 'pump' | 'foot', string>>;
  readonly figures: Readonly<
    Record<
      | 'well'
      | 'hole'
      | 'rest'
      | 'readOn'
      | 'aboveGround'
      | 'intake'
      | 'pump'
      | 'pipe'
      | 'outside'
      | 'inside'
      | 'bucketsAnHour'
      | 'bucket',
      string
    >
  > & { readonly yields: Readonly<Record<YieldBasis, string>> };
  readonly keep: Readonly<Record<'title' | 'about' | 'across', string>> & {
    readonly parts: Readonly<Record<Exclude<PumpPartId, 'washers'>, string>>;
    /** Small parts that wear, by the kind of pump. */
    readonly wear: Readonly<Record<CarePlan, string>>;
  };
  readonly care: Readonly<Record<'title' | 'week' | 'month' | 'year', string>> & {
    readonly tasks: Readonly<Record<CareTask, string>>;
  };
  readonly away: Readonly<Record<'title' | 'now' | 'wash' | 'washing', string>> & {
    readonly what: Readonly<Record<Distance, string>>;
  };
  readonly quality: Readonly<
    Record<
      | 'title'
      | 'none'
      | 'noneDay'
      | 'sample'
      | 'sampleHere'
      | 'aboveHealth'
      | 'aboveUse'
      | 'notAbove'
      | 'unclear'
      | 'notTested'
      | 'again'
      | 'laboratory',
      string
    >
  >;
  readonly call: Readonly<
    Record<
      | 'title'
      | 'chair'
      | 'caretaker'
      | 'telephone'
      | 'mechanic'
      | 'contractor'
      | 'supervisor'
      | 'when'
      | 'signs',
      string
    >
  >;
  readonly chlorine: {
    readonly title: string;
    readonly each: readonly string[];
    readonly last: string;
  };
  readonly closed: { readonly title: string; readonly each: readonly ClosedRule[] };
  readonly marks: Readonly<
    Record<'committee' | 'contractor' | 'supervisor' | 'name' | 'day', string>
  >;
  readonly notes: string;
}

export interface ClosedRule {
  readonly sign: 'cover' | 'rubbish' | 'dig' | 'phone';
  readonly says: string;
}
