import type { Language } from '../base/language.ts';
import type { Refusal } from '../base/result.ts';
import type { Desk, Move } from '../record/desk.ts';
import type { WellRecord } from '../record/schema.ts';
import type { Trouble } from '../record/trouble.ts';
import type { AttachmentCalls } from './attachmentsShape.ts';
import type { BackdropCalls } from './backdropShape.ts';
import type { BinCalls } from './binShape.ts';
import type { CopyCalls } from './copiesShape.ts';
import type { BinderCalls } from './binderShape.ts';
import type { ExportCalls } from './exportShape.ts';
import type { GuidelineCalls } from './guidelinesShape.ts';
import type { ImportCalls } from './importsShape.ts';
import type { IdentityCalls, IssueCalls, SealCalls } from './issuesShape.ts';
import type { ListCalls } from './listShape.ts';
import type { PaperCalls } from './papersShape.ts';
import type { PracticeCalls } from './practicesShape.ts';
import type { PrintingCalls } from './printingShape.ts';
import type { Settings } from './settingsShape.ts';
import type { TemplateCalls } from './templatesShape.ts';
import type { WellRow } from './wellRow.ts';

/** A revision of a well as the archive holds it. */
export interface StoredWell {
  readonly id: string;
  readonly revision: number;
  readonly changedAt: string;
  /** What could be read of the document. Draw and compute from this. */
  readonly record: WellRecord;
  /** The whole document in the newest shape, with what could not be read. */
  readonly document: Readonly<Record<string, unknown>>;
  /** What could not be read, by its place in the document. */
  readonly troubles: readonly Trouble[];
}

/** How far the work on a well is. */
export interface WorkState {
  /** Number of the newest edit, which only rises; 0 where there was none. */
  readonly edit: number;
  /** Something was typed that is in no revision yet. */
  readonly unrevised: boolean;
  /** ISO 8601 moment of the newest edit; of the revision where there was none. */
  readonly changedAt: string;
}

/** What was typed since the well was opened last, so that undo leads back to that. */
export interface WorkingCopy extends WorkState {
  readonly base: Desk;
  readonly moves: readonly Move[];
}

/** A well's newest revision, and what is being made of it. */
export interface OpenedWell extends StoredWell {
  readonly working: WorkingCopy;
}

export type { Desk, Move, Settings, Trouble, WellRow };

export interface ArchiveState {
  readonly name: string;
  readonly wells: number;
  /** True when the file was made by a newer version, with the sentence that says so. */
  readonly readOnly: boolean;
  readonly sentence?: string;
}

/** An issued paper that no longer is what it was, or shows another record than the archive has. */
export interface UnsoundPaper {
  readonly id: string;
  /** Among the well's papers, from 1. */
  readonly paper: number;
  readonly revision: number;
  readonly fileName: string;
  readonly sentence: string;
}

/** What going through the chain of hashes and the issued papers found. */
export interface ArchiveCheck {
  readonly revisions: number;
  /** Revisions that no longer are what was saved, each as a sentence. */
  readonly broken: readonly {
    readonly id: string;
    readonly revision: number;
    readonly sentence: string;
  }[];
  /** Issued papers, and those of them that are not whole. */
  readonly papers: number;
  readonly unsound: readonly UnsoundPaper[];
}

/**
 * Every call that the page may send, with what it takes and what it gives. Arguments and answers
 * are JSON. A refusal comes back as a value; a throw is a defect.
 */
export interface Calls
  extends
    ListCalls,
    BinCalls,
    CopyCalls,
    BinderCalls,
    BackdropCalls,
    AttachmentCalls,
    PracticeCalls,
    GuidelineCalls,
    ImportCalls,
    ExportCalls,
    TemplateCalls,
    PaperCalls,
    IssueCalls,
    IdentityCalls,
    SealCalls,
    PrintingCalls {
  'archive.state': { takes: Record<string, never>; gives: ArchiveState };
  /**
   * Goes through every revision's hash and every issued paper; those that are not whole come back by
   * well and revision, or well and paper.
   */
  'archive.check': { takes: Record<string, never>; gives: ArchiveCheck };
  'wells.list': { takes: { search?: string }; gives: readonly WellRow[] };
  'wells.open': { takes: { id: string }; gives: OpenedWell };
  /** A well as it was at one revision. */
  'wells.openRevision': { takes: { id: string; revision: number }; gives: StoredWell };
  /** The desk as it lies now, for who has the well open and is not the one who edited it. */
  'wells.desk': { takes: { id: string }; gives: WorkState & { revision: number; desk: Desk } };
  /**
   * Puts moves over the desk; they are on disk when it is answered. Refused as `staleEdit` when
   * `upon` is not the newest edit.
   */
  'wells.edit': {
    takes: { id: string; upon: number; moves: readonly Move[] };
    gives: WorkState & { troubles: readonly Trouble[] };
  };
  /**
   * Makes the next revision of the record on the desk; none where it is the newest one already.
   * Refused as `staleEdit` like an edit.
   */
  'wells.save': {
    takes: { id: string; upon: number; reason?: string };
    gives: { revision: number; changedAt: string; troubles: readonly Trouble[] };
  };
  /** What differs between two revisions, in sentences. */
  'wells.compare': {
    takes: { id: string; before: number; now: number; language: Language };
    gives: readonly string[];
  };
  /**
   * Makes an older revision's record the next revision. Refused as `typedSince` while something
   * typed is in no revision.
   */
  'wells.revert': {
    takes: { id: string; revision: number; reason?: string };
    gives: { revision: number };
  };
  /** The next opening starts from the desk as it lies; undo will lead no further back. */
  'wells.leave': { takes: { id: string; upon: number }; gives: null };
  'wells.create': { takes: { record: WellRecord }; gives: OpenedWell };
  'wells.revisions': {
    takes: { id: string };
    gives: readonly {
      revision: number;
      changedAt: string;
      hash: string;
      /** Who made it, and why; empty where nobody said. */
      author: string;
      reason: string;
    }[];
  };
  /** What a person chose for this computer. */
  'settings.read': { takes: Record<string, never>; gives: Settings };
  /** Keeps what is given, over what was chosen before; gives all that is chosen now. */
  'settings.write': { takes: Settings; gives: Settings };
}

export type CallName = keyof Calls;
export type Takes<N extends CallName> = Calls[N]['takes'];
export type Gives<N extends CallName> = Calls[N]['gives'];

/** What travels back to the page. */
export type Answer<N extends CallName> =
  { readonly ok: true; readonly value: Gives<N> } | { readonly ok: false; readonly error: Refusal };
