/** Words of the location map; `{…}` are filled in. */
export interface MapWords {
  readonly overview: string;
  /** `{n}`, `{of}`. */
  readonly sheet: string;
  readonly without: string;
  readonly datum: string;
  /** `{zone}`, `{step}` in kilometres. */
  readonly grid: string;
  readonly backdrop: string;
  /** `{n}`. */
  readonly unnamed: string;
  readonly elsewhere: string;
  readonly led: string;
}
