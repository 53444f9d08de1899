/** A well that was put into the bin. */
export interface BinnedWell {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly village: string;
  readonly district: string;
  /** How many revisions go with it. */
  readonly revisions: number;
  /** ISO 8601. */
  readonly binnedAt: string;
}

export interface BinCalls {
  /** The last put in comes first. */
  'bin.list': { takes: Record<string, never>; gives: readonly BinnedWell[] };
  'bin.put': { takes: { id: string }; gives: { wells: number } };
  'bin.putBack': { takes: { id: string }; gives: { wells: number } };
  /**
   * Takes these wells out of the archive with all their revisions, for good. Those that are no
   * longer in the bin stay. Gives how many went.
   */
  'bin.empty': { takes: { ids: readonly string[] }; gives: { wells: number } };
}
