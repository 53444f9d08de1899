/** A figure that is known only between two bounds; both are the same where it is known well. */
export interface Interval {
  readonly least: number;
  readonly most: number;
}
