import type { Language } from '../base/language.ts';
import type { FigureId } from './figures.ts';

/** Words in each language of the program. */
export type InLanguages = Readonly<Record<Language, string>>;

/** Where a figure comes from: `common practice` of the trade has no title of a publication. */
export interface Source {
  readonly title: InLanguages;
  /** `read`: looked up; `fromMemory`: named, but not looked up; `common`: a custom of the trade. */
  readonly mark: 'read' | 'fromMemory' | 'common';
}

/** A figure with the key of its source. */
export interface Figure {
  readonly value: number;
  readonly source: string;
}

/** What one thing costs, in the practice's currency. */
export interface Price {
  readonly each: number;
  /** Of what, as people say it: sack, m, piece. */
  readonly per: string;
}

/**
 * A named set of limits and factors with their sources, as its file holds it. What it leaves out
 * it takes from the practice that it is based on.
 */
export interface PracticeFile {
  readonly id: string;
  readonly version: string;
  readonly name: InLanguages;
  /** For which wells it is meant. */
  readonly scope: InLanguages;
  readonly basedOn?: string;
  readonly sources: Readonly<Record<string, Source>>;
  readonly figures: Readonly<Partial<Record<FigureId, Figure>>>;
  /** Rules that it does not ask for. */
  readonly without?: readonly string[];
  readonly currency?: string;
  readonly prices?: Readonly<Record<string, Price>>;
}

/** A figure as it holds, with its source, and the practice that set it. */
export interface HeldFigure {
  readonly value: number;
  readonly source: Source;
  readonly setBy: string;
}

/** A practice with all that it takes from those that it is based on. */
export interface Practice {
  readonly id: string;
  readonly version: string;
  readonly name: InLanguages;
  readonly scope: InLanguages;
  /** Ids of what it is based on, the nearest first. */
  readonly basedOn: readonly string[];
  readonly figures: Readonly<Record<FigureId, HeldFigure>>;
  readonly without: readonly string[];
  readonly currency?: string;
  readonly prices: Readonly<Record<string, Price>>;
}
