/** Words of the last pages; `{…}` are filled in. */
export interface ColophonWords {
  readonly made: string;
  /** `{day}`, `{version}`. */
  readonly madeSays: string;
  readonly madeBy: string;
  readonly hash: string;
  readonly noHash: string;
  readonly wells: string;
  readonly filter: string;
  readonly allWells: string;
  /** `{n}`, `{failed}`. */
  readonly counts: string;
  readonly revisions: string;
  readonly practices: string;
  /** `{name}`, `{version}`, `{wells}`. */
  readonly named: string;
  readonly guidelines: string;
  readonly noSamples: string;
  readonly how: string;
  readonly howSays: readonly string[];
  readonly sources: string;
  readonly sourcesSays: readonly string[];
  readonly failed: string;
}
