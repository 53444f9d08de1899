/** Words of sections through wells; `{…}` are filled in. */
export interface SectionWords {
  /** `{n}`, where nobody named it. */
  readonly title: string;
  /** `{down}`, `{across}`, `{times}`. */
  readonly scales: string;
  /** `{datum}`. */
  readonly datum: string;
  readonly noDatum: string;
  readonly datums: string;
  readonly flat: string;
  /** `{wells}`. */
  readonly assumed: string;
  readonly left: string;
  /** `{n}` wells. */
  readonly absent: string;
  readonly joined: string;
  readonly notJoined: string;
  readonly none: string;
  readonly heads: Readonly<Record<'elevation' | 'depth' | 'along' | 'ground', string>>;
}
