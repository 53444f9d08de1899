/** What a run of the benchmarks was asked for, for parts that choose by it. */
export interface Asked {
  readonly rounds: number;
  /** Sizes of archives. */
  readonly wells: readonly number[];
}
