import type { Refusal } from '../base/result.ts';
import type { PlanKind } from '../exchange/plan.ts';
import type { Detected } from '../exchange/proposal/detect.ts';
import type { Encoding } from '../exchange/tables/decode.ts';
import type { TableMapping } from '../exchange/tables/mapping.ts';
import type { TableTrouble } from '../exchange/tables/trouble.ts';
import type { UnknownWords } from '../exchange/tables/unknownWords.ts';

export type { Detected, Encoding, PlanKind, TableMapping, TableTrouble, UnknownWords };

/** What becomes of a well that is there: its next revision, another well, or nothing. */
export const wellChoices = ['leave', 'revise', 'add'] as const;

export type WellChoice = (typeof wellChoices)[number];

/** Rows that are shown of a table, and letters of each of their cells. */
export const shownRows = 25;
export const shownLetters = 80;
/** Wells and troubles of a plan that travel to the page. */
export const shownWells = 500;

export interface ShownRow {
  /** From 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** A table that was opened. */
export interface OpenedTable {
  readonly file: string;
  readonly sheet?: string;
  readonly detected: Detected;
  /** The first rows, titles and headings among them. */
  readonly rows: readonly ShownRow[];
}

export interface OpenedImport {
  readonly tables: readonly OpenedTable[];
  /** The matching that the headings speak for; absent where they say nothing. */
  readonly mapping?: TableMapping;
  /** Matchings that were kept and fit these headings. */
  readonly remembered: readonly { readonly name: string; readonly mapping: TableMapping }[];
  /** Files that need no matching. */
  readonly records: readonly {
    readonly file: string;
    readonly format: string;
    readonly wells: number;
  }[];
  readonly refused: readonly { readonly file: string; readonly error: Refusal }[];
}

export interface PlannedLine {
  /** Its place among all that come, from 0. */
  readonly at: number;
  readonly kind: PlanKind;
  readonly number: string;
  readonly name: string;
  readonly village: string;
  readonly file: string;
  readonly line: number;
}

export interface ImportPlan {
  readonly counts: Readonly<Record<PlanKind, number>>;
  /** Those that a person may choose about first; not more than `shownWells`. */
  readonly wells: readonly PlannedLine[];
  readonly troubles: readonly TableTrouble[];
  /** Words of closed lists that the matching does not know. */
  readonly words: readonly UnknownWords[];
}

/** What is being done with the wells of an import: set beside the archive, or brought in. */
export type ImportStage = 'looking' | 'bringing';

export interface ImportProgress {
  readonly stage: ImportStage;
  readonly done: number;
  readonly total: number;
}

export interface ImportChoices {
  /** For all wells that are there with other content. */
  readonly known: WellChoice;
  /** For single ones, by their places in the plan. */
  readonly single?: Readonly<Record<string, WellChoice>>;
}

/** Calls about files that bring wells in. One import is open at a time in a service. */
export interface ImportCalls {
  /** Opens files, given as base64; those opened before are let go. */
  'imports.open': {
    takes: { files: readonly { name: string; data: string }[] };
    gives: OpenedImport;
  };
  /** The first rows of a table read in another way. Refused as `noImport`. */
  'imports.rows': {
    takes: { table: number; encoding?: Encoding; delimiter?: string };
    gives: { rows: readonly ShownRow[] };
  };
  /** What would come; nothing is changed. Refusals: `noImport`, `badMapping`, `stopped`. */
  'imports.look': { takes: { mapping?: TableMapping }; gives: ImportPlan };
  /** Brings all in, or nothing. Refusals: those of `imports.look` and of the archive. */
  'imports.bring': {
    takes: { mapping?: TableMapping; choices: ImportChoices; author?: string; reason?: string };
    gives: { created: number; revised: number; left: number };
  };
  /** Stops what is being looked at or brought in; nothing of it stays. */
  'imports.stop': { takes: Record<string, never>; gives: null };
  /** Lets the files go. */
  'imports.close': { takes: Record<string, never>; gives: null };
  'imports.mappings': {
    takes: Record<string, never>;
    gives: readonly { name: string; mapping: TableMapping }[];
  };
  /** Keeps a matching under a name, over one that has it. Refused as `badMapping`. */
  'imports.keepMapping': { takes: { name: string; mapping: TableMapping }; gives: null };
  'imports.dropMapping': { takes: { name: string }; gives: null };
}
