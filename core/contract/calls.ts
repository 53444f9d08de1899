import type { Finding } from '../base/finding.ts';
import type { Language } from '../base/language.ts';
import type { Refusal } from '../base/result.ts';
import type { WellRecord } from '../record/schema.ts';
import type { WellState } from '../record/identity.ts';
import type { Trouble } from '../record/trouble.ts';
import type { Settings } from './settingsShape.ts';

/** One line of the archive's list of wells. */
export interface WellRow {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly district: string;
  readonly village: string;
  readonly state: WellState | '';
  /** Deepest point, metres below ground; absent when not known. */
  readonly depthM?: number;
  readonly revision: number;
  /** ISO 8601 moment of the last change. */
  readonly changedAt: string;
}

/** A well as the archive holds it. */
export interface StoredWell {
  readonly id: string;
  readonly revision: number;
  readonly changedAt: string;
  /** What could be read of the document. Draw and compute from this. */
  readonly record: WellRecord;
  /** The whole document in the newest shape, with what could not be read. Change and save this. */
  readonly document: Readonly<Record<string, unknown>>;
  /** What could not be read, by its place in the document. */
  readonly troubles: readonly Trouble[];
}

export type { Settings, Trouble };

export interface ArchiveState {
  readonly name: string;
  readonly wells: number;
  /** True when the file was made by a newer version, with the sentence that says so. */
  readonly readOnly: boolean;
  readonly sentence?: string;
}

/** What going through the chain of hashes found. */
export interface ArchiveCheck {
  readonly revisions: number;
  /** Revisions that no longer are what was saved, each as a sentence. */
  readonly broken: readonly {
    readonly id: string;
    readonly revision: number;
    readonly sentence: string;
  }[];
}

/**
 * Every call that the page may send, with what it takes and what it gives. Arguments and answers
 * are JSON. A refusal comes back as a value; a throw is a defect.
 */
export interface Calls {
  'archive.state': { takes: Record<string, never>; gives: ArchiveState };
  /** Goes through every revision's hash; broken ones come back by well and revision. */
  'archive.check': { takes: Record<string, never>; gives: ArchiveCheck };
  'wells.list': { takes: { search?: string }; gives: readonly WellRow[] };
  'wells.open': { takes: { id: string }; gives: StoredWell };
  /** A well as it was at one revision. */
  'wells.openRevision': { takes: { id: string; revision: number }; gives: StoredWell };
  /** Saves a new revision when `revision` is still the newest; refused otherwise. */
  'wells.save': {
    takes: { id: string; revision: number; record: WellRecord };
    gives: { revision: number; changedAt: string; troubles: readonly Trouble[] };
  };
  'wells.create': { takes: { record: WellRecord }; gives: StoredWell };
  'wells.revisions': {
    takes: { id: string };
    gives: readonly { revision: number; changedAt: string; hash: string }[];
  };
  /** An as-built sheet as PDF, base64. */
  'papers.asBuilt': {
    takes: { id: string; paper: 'A4' | 'A3'; language?: Language };
    gives: { fileName: string; pdf: string; findings: readonly Finding[] };
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
