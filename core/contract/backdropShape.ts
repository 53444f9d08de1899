import type { MapShape } from '../base/geo/shapes.ts';

/** Lines and outlines that lie under the wells of a map. */
export interface Backdrop {
  readonly id: string;
  readonly name: string;
  readonly shapes: readonly MapShape[];
  /** ISO 8601. */
  readonly addedAt: string;
}

export interface BackdropCalls {
  'backdrops.list': { takes: Record<string, never>; gives: readonly Backdrop[] };
  /** Reads a GeoJSON file's text and keeps it. Tells how many points it left out. */
  'backdrops.add': {
    takes: { fileName: string; text: string };
    gives: { backdrop: Backdrop; pointsLeftOut: number };
  };
  'backdrops.remove': { takes: { id: string }; gives: { left: number } };
}
