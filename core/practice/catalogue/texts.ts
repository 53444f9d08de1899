import type { FillKind } from '../../record/annulus.ts';
import type { ComponentKind } from '../../record/strings.ts';
import type { ModelFindingCode } from '../../model/findings.ts';

/** Every code that the catalogue must have a text for. */
export type FindingCode = ModelFindingCode;

/**
 * What a finding says. `{name}` stands for a value of the finding, or for `fromM` and `toM`; the
 * unit is written beside it.
 */
export interface FindingText {
  /** A few words, for a list. */
  readonly title: string;
  /** What is so, and where. */
  readonly sentence: string;
  /** Why it matters. */
  readonly why: string;
  /** What to do about it. */
  readonly todo: string;
}

/** All texts of one language. A language that lacks one does not compile. */
export interface CatalogueTexts {
  readonly findings: Readonly<Record<FindingCode, FindingText>>;
  /** Words for the values that are kinds. */
  readonly words: Readonly<Record<FillKind | ComponentKind, string>>;
}
