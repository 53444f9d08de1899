/** An archive's file beside the open one, or among its backups. */
export interface CopyFile {
  readonly fileName: string;
  /** ISO 8601 moment at which it was written last. */
  readonly madeAt: string;
  readonly bytes: number;
  /** Absent where the file cannot be read. */
  readonly wells?: number;
}

/** Where a file lies: in the archive's folder, or in the folder of its backups. */
export const copyPlaces = ['beside', 'backups'] as const;

export interface CopyName {
  readonly place: (typeof copyPlaces)[number];
  readonly fileName: string;
}

/**
 * What a well of another archive is here. `new`: not here yet. `later`: it went on there. `apart`:
 * it went on in both. `alike`: another one here has its number and place. `typing`: something typed
 * of it here is in no revision.
 */
export type TakenKind = 'new' | 'later' | 'apart' | 'alike' | 'typing';

/**
 * Which record stands last once both are joined; the other one's stay among the revisions. `two`:
 * of alike wells, that they are two.
 */
export const takeChoices = ['ours', 'theirs', 'two'] as const;
export type TakeChoice = (typeof takeChoices)[number];

export interface TakenWell {
  /** In the other archive. */
  readonly id: string;
  readonly kind: TakenKind;
  readonly number: string;
  readonly name: string;
  readonly village: string;
}

export interface OtherSight {
  readonly wells: readonly TakenWell[];
  /** Wells of which all is here already. */
  readonly known: number;
  /** Wells in the other archive's bin, which stay there. */
  readonly binned: number;
}

/** One difference between two records, side by side. */
export interface Beside {
  readonly chapter: string;
  readonly what: string;
  /** Empty where it says nothing. */
  readonly ours: string;
  readonly theirs: string;
}

export interface RecordsBeside {
  readonly ours: { readonly revision: number; readonly changedAt: string };
  readonly theirs: { readonly revision: number; readonly changedAt: string };
  readonly differences: readonly Beside[];
}

export interface CopyCalls {
  /** Backups, newest first, and other archives in the same folder. */
  'copies.list': {
    takes: Record<string, never>;
    gives: { readonly backups: readonly CopyFile[]; readonly beside: readonly CopyFile[] };
  };
  'copies.make': { takes: Record<string, never>; gives: { readonly fileName: string } };
  /** Gives the archive the content of a backup; what it held is put aside in the file named. */
  'copies.restore': { takes: { fileName: string }; gives: { readonly aside: string } };
  /** What would come of another archive. */
  'copies.look': { takes: CopyName; gives: OtherSight };
  /** A well that waits for a choice, as it is in both. */
  'copies.compare': {
    takes: CopyName & { id: string; language: 'en' | 'fr' | 'pt' };
    gives: RecordsBeside;
  };
  /** Takes what needs no choice and what has one, in one transaction. */
  'copies.take': {
    takes: CopyName & { choices: Readonly<Record<string, TakeChoice>> };
    gives: {
      readonly added: number;
      readonly continued: number;
      readonly joined: number;
      readonly left: number;
      /** Ids of practices, guideline values and backdrops that stand otherwise there. */
      readonly differing: readonly string[];
    };
  };
}
