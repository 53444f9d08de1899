import type { FillKind } from '../../record/annulus.ts';
import type { ComponentKind } from '../../record/strings.ts';
import type { ModelFindingCode } from '../../model/findings.ts';
import type { FigureId } from '../figures.ts';
import type { MissingWhat } from '../rules/missing.ts';
import type { RuleCode } from '../rules/ruleCodes.ts';
import type { ServiceWord } from '../rules/service/words.ts';
import type { WaterParameter } from '../rules/water/parameters.ts';

/** Every code that the catalogue must have a text for. */
export type FindingCode = ModelFindingCode | RuleCode;

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
  readonly words: Readonly<Record<FillKind | ComponentKind | ServiceWord, string>>;
  /** What water is tested for. */
  readonly parameters: Readonly<Record<WaterParameter, string>>;
  /** What a rule would need in order to judge, as in a list. */
  readonly missing: Readonly<Record<MissingWhat, string>>;
  /** What each figure of a practice is, as in a list. */
  readonly figures: Readonly<Record<FigureId, string>>;
  /** Where a finding comes from. */
  readonly sources: {
    /** The record contradicts itself or leaves out what it needs. */
    readonly record: string;
    /** A rule compares with no figure: people of the trade do it so. */
    readonly common: string;
    /** A rule compares results of samples with guideline values. */
    readonly guidelines: string;
    /** A rule compares with the limits of a kind of pump. */
    readonly pumpKinds: string;
    /** Behind the title of a source that nobody looked up. */
    readonly fromMemory: string;
  };
}
