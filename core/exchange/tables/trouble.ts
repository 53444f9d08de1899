/** Something in a table that could not be taken as it stands. */
export interface TableTrouble {
  readonly file: string;
  /** Line of the file on which the row begins, counted from 1. */
  readonly line: number;
  /** Heading of the column, or of several joined by ` + `; empty where the row as a whole is meant. */
  readonly column: string;
  /** Says what is wrong and what came of it. */
  readonly sentence: string;
  /** The row came in all the same. */
  readonly kept: boolean;
}
