import type { Condition, Purpose } from '../../../water/guidelines/guidelineSet.ts';

/** The words of the page of water quality besides those of the water itself, in one language. */
export interface QualityWords {
  /** In the title block. */
  readonly document: string;
  readonly title: string;
  /** That no sheet declares water safe, and who decides. */
  readonly noVerdict: string;
  /** `{name}` and `{version}` of the set of guideline values. */
  readonly against: string;
  readonly samples: Readonly<
    Record<
      'title' | 'number' | 'taken' | 'by' | 'place' | 'laboratory' | 'received' | 'remark',
      string
    >
  >;
  readonly tables: Readonly<Record<'health' | 'use' | 'noValue', string>>;
  readonly columns: Readonly<
    Record<
      'parameter' | 'sample' | 'written' | 'converted' | 'limit' | 'guideline' | 'basis' | 'state',
      string
    >
  >;
  /** In a word or two, for a narrow column. */
  readonly purposes: Readonly<Record<Purpose, string>>;
  readonly conditions: Readonly<Record<Condition, string>>;
  /** Before a parameter's form, as in `as N`. */
  readonly as: string;
  readonly notTested: string;
  readonly missing: string;
  /** Title of the remarks on samples. */
  readonly notes: string;
  readonly unknown: string;
  readonly reckoned: Readonly<
    Record<
      | 'title'
      | 'balance'
      | 'cations'
      | 'anions'
      | 'lacking'
      | 'hardness'
      | 'solids'
      | 'nitrogen'
      | 'sample',
      string
    >
  >;
  readonly disinfection: Readonly<
    Record<
      | 'title'
      | 'day'
      | 'product'
      | 'strength'
      | 'dose'
      | 'mass'
      | 'contact'
      | 'pumpedOff'
      | 'residual'
      | 'remark'
      | 'none',
      string
    >
  >;
  readonly cautions: Readonly<Record<'title', string>> & { readonly each: readonly string[] };
  readonly sources: string;
}
