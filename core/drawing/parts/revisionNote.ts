/** A revision of the record and what changed in it. */
export interface RevisionNote {
  /** Absent for a draft, which is in no revision yet. */
  readonly number?: number;
  /** ISO 8601. */
  readonly on: string;
  readonly by?: string;
  /** Sentences in the sheet's language. */
  readonly changes: readonly string[];
}
