import type { MapShape } from '../../base/geo/shapes.ts';
import type { Language } from '../../base/language.ts';
import type { Fonts } from '../../base/text/metrics.ts';
import type { DepthM } from '../../base/units.ts';
import type { Page } from '../items.ts';
import type { Kit } from '../kit.ts';
import { paperOf, type Paper, type PaperName } from '../paper.ts';
import type { Template } from '../parts/headStrip.ts';
import { sheetWordsIn } from '../words/languages.ts';
import type { BinderWell } from './binderWell.ts';
import type { BoundSheet } from './boundPapers.ts';
import type { IssuedPapers } from './issued/issuedPaper.ts';
import type { PartId } from './partIds.ts';
import { binderWordsIn } from './words/languages.ts';
import type { BinderWords } from './words/words.ts';

/** A well whose papers could not be made, and why, in a sentence in the binder's language. */
export interface FailedWell {
  readonly wellId: string;
  readonly sentence: string;
}

/** A line between two neighbours of a section that a person asked for. */
export interface JoinedDepths {
  readonly from: { readonly wellId: string; readonly depthM: DepthM };
  readonly to: { readonly wellId: string; readonly depthM: DepthM };
}

/** A section through wells in the order in which it meets them. */
export interface SectionChoice {
  readonly title?: string;
  readonly wellIds: readonly string[];
  /** Nothing is drawn between wells but this. */
  readonly joins?: readonly JoinedDepths[];
}

/** All that the binder's own pages tell. Plain JSON. */
export interface BinderContent {
  readonly title: string;
  /** Who made it; empty where nobody said. */
  readonly madeBy: string;
  /** ISO 8601. */
  readonly madeAt: string;
  /** In the binder's order: see `order.ts`. */
  readonly wells: readonly BinderWell[];
  readonly failed: readonly FailedWell[];
  readonly papers: readonly BoundSheet[];
  /** Outlines, roads, rivers under the wells of the map. */
  readonly backdrop: readonly MapShape[];
  readonly sections: readonly SectionChoice[];
  readonly issued: IssuedPapers;
  readonly template?: Template;
  /** Which wells were asked for, in words; empty for all of the archive. */
  readonly filterSays: string;
  readonly programVersion: string;
  /** SHA-256 over the revisions that went in, hexadecimal. */
  readonly archiveHash?: string;
}

/** One of several files that a long binder is cut into. */
export interface Volume {
  /** From 1. */
  readonly number: number;
  readonly of: number;
  /** Pages of the whole binder that it holds, both ends included. */
  readonly fromPage: number;
  readonly toPage: number;
}

/**
 * Where things begin, in pages counted from 1 over the whole binder, volumes together. The number
 * of pages of a part never depends on it, so that a binder is laid once to count and once to print.
 * A link of a part leads to `{ page }` by the same count; who cuts the binder into volumes turns it
 * into a page of the volume, or takes it away where it leads to another.
 */
export interface Places {
  pageOf(wellId: string): number;
  /** Page of the district's divider. */
  districtAt(district: string): number;
  partAt(part: PartId): number;
  /** A page as it is written, at most 9 letters: its number, or volume and number. */
  says(page: number): string;
}

/** Places for counting: everything stands on the first page. */
export const unknownPlaces: Places = {
  pageOf: () => 1,
  districtAt: () => 1,
  partAt: () => 1,
  says: String,
};

/** A bookmark under a part's own. */
export interface PartMark {
  readonly title: string;
  /** Page of the part, from 0. */
  readonly page: number;
}

/** Pages keep inside the frame of their paper: margins are for gutter, tabs and page numbers. */
export interface LaidPart {
  readonly pages: readonly Page[];
  readonly marks: readonly PartMark[];
}

export interface BinderKit extends Kit {
  readonly own: BinderWords;
  readonly paper: Paper;
}

/** What the binder's pages are laid with: upright A4, or lying A3. */
export function binderKit(fonts: Fonts, language: Language, paper: PaperName = 'A4'): BinderKit {
  return {
    fonts,
    words: sheetWordsIn(language),
    own: binderWordsIn(language),
    paper: paperOf(paper),
  };
}
