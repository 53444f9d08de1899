import type { Outcome } from '../binderWell.ts';

/** Words of the plots; `{…}` are filled in. */
export interface PlotWords {
  readonly spread: string;
  readonly success: string;
  readonly quality: string;
  readonly depths: string;
  readonly safeYields: string;
  readonly otherYields: string;
  /** `{n}`, `{of}`. */
  readonly known: string;
  /** `{value}` with its unit. */
  readonly median: string;
  readonly byYear: string;
  readonly byGeology: string;
  readonly noLog: string;
  readonly outcomes: Readonly<Record<Outcome, string>>;
  /** `{water}`, `{decided}`, `{share}`. */
  readonly share: string;
  /** `{open}`. */
  readonly openCount: string;
  readonly successSays: string;
  readonly qualitySays: string;
  /** `{name}`, `{n}`, `{of}`. */
  readonly set: string;
  /** `{n}`. */
  readonly results: string;
  /** `{value}`, `{n}`, `{of}`. */
  readonly above: string;
  readonly under: string;
  /** `{n}`. */
  readonly untold: string;
}
