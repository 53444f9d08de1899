import type { Language } from '../base/language.ts';
import type { SectionChoice } from '../drawing/binder/binder.ts';
import type { PaperName } from '../drawing/paper.ts';
import type { WellFilter } from '../record/wellFilter.ts';

/** A paper of each well, and its language. */
export type BinderPaper =
  | { readonly kind: 'asBuilt'; readonly language: Language }
  | { readonly kind: 'layingOut'; readonly language: Language }
  /** One language or two, a page each. */
  | { readonly kind: 'committee'; readonly languages: readonly Language[] };

/** What a binder shall hold. Plain JSON, kept in the archive under a name. */
export interface BinderWish {
  /** On the cover. */
  readonly title: string;
  /** Who makes it; empty where nobody is to be named. */
  readonly madeBy: string;
  /** Of the binder's own pages. */
  readonly language: Language;
  /** Those that fit, or those named; all of the archive where neither is there. */
  readonly wells: { readonly filter?: WellFilter; readonly ids?: readonly string[] };
  readonly papers: readonly BinderPaper[];
  /** Of the as-built drawings and of the binder's own pages; other papers have one size. */
  readonly paper: PaperName;
  /** Printed on both sides of a leaf. */
  readonly duplex: boolean;
  /** Wells in the order of each section. */
  readonly sections: readonly SectionChoice[];
  /** Lays what the archive keeps as backdrop under the wells of the map. */
  readonly backdrop: boolean;
  /** Most pages of a volume. */
  readonly mostPages: number;
  /** Shows pictures that no bound paper shows behind the papers of each well, and lists other files. */
  readonly attachments?: boolean;
  /** Copies issued papers, as they are kept, into a folder beside the volumes. */
  readonly withIssued?: boolean;
}

/** Bounds of the pages of a volume: a ring binder takes some hundred leaves. */
export const volumeBounds = { least: 10, most: 1000, usual: 250 } as const;

/** Bounds of the wells of a section, and of the sections of a binder. */
export const sectionBounds = { leastWells: 2, mostWells: 40, most: 50 } as const;

/** A wish under its name. */
export interface KeptBinder {
  readonly name: string;
  readonly wish: BinderWish;
  /** ISO 8601. */
  readonly changedAt: string;
}

/** How far a binder is. */
export interface BinderProgress {
  /** What is being done: wells laid, pages put in order and painted, issued papers copied. */
  readonly stage: 'lay' | 'plan' | 'paint' | 'copy';
  readonly done: number;
  readonly of: number;
}

/** A file of a finished binder. */
export interface BinderFile {
  readonly fileName: string;
  readonly pages: number;
  readonly bytes: number;
}

/** A binder that is done. */
export interface FinishedBinder {
  readonly files: readonly BinderFile[];
  readonly pages: number;
  readonly wells: number;
  /** Issued papers that were copied, and the folder beside the volumes by its name alone. */
  readonly issued?: { readonly folder: string; readonly files: number };
  /** Wells whose papers could not be made: a page in the binder says why. */
  readonly failed: readonly { readonly number: string; readonly sentence: string }[];
}

/** What the page is told of the binder that is being made, or was made last. */
export type BinderState =
  | { readonly state: 'none' }
  | { readonly state: 'running'; readonly name: string; readonly progress: BinderProgress }
  | { readonly state: 'done'; readonly name: string; readonly binder: FinishedBinder }
  | { readonly state: 'stopped'; readonly name: string }
  | { readonly state: 'refused'; readonly name: string; readonly sentence: string };

/** Calls about binders. */
export interface BinderCalls {
  'binders.list': { takes: Record<string, never>; gives: readonly KeptBinder[] };
  /** Keeps a wish under its name, over the one that had it. */
  'binders.put': { takes: { name: string; wish: BinderWish }; gives: KeptBinder };
  'binders.remove': { takes: { name: string }; gives: null };
  /**
   * Begins to make the binder that is kept under a name; one at a time. What an earlier run laid
   * is not laid again.
   */
  'binders.start': { takes: { name: string }; gives: BinderState };
  'binders.stop': { takes: Record<string, never>; gives: BinderState };
  'binders.state': { takes: Record<string, never>; gives: BinderState };
  /** A file of the binder made last, base64. */
  'binders.file': { takes: { fileName: string }; gives: { fileName: string; pdf: string } };
}
