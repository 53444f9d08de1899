/** Longitude and latitude, WGS 84, degrees, in the order in which map files write them. */
export type LonLat = readonly [longitude: number, latitude: number];

/** A boundary, road or river: lines that belong together. */
export interface MapShape {
  readonly name?: string;
  /** True of an outline with its holes; its lines end where they begin. */
  readonly closed: boolean;
  readonly lines: readonly (readonly LonLat[])[];
}
