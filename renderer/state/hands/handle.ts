import type { RecordPath } from '../../../core/base/recordPath.ts';
import type { DepthM, Metres, Millimetres } from '../../../core/base/units.ts';
import type { FillKind } from '../../../core/record/annulus.ts';
import type { Material } from '../../../core/record/materials.ts';
import type { LevelState } from '../../../core/record/water.ts';

/**
 * How a write belongs to an edge: alone (`own`), as the foot of the part above or the top of the
 * part below, or as something that stands at a fixed distance and goes along (`joined`).
 */
export type Role = 'own' | 'above' | 'below' | 'joined';

/** A value of the record that follows an edge. */
export interface Write {
  readonly path: RecordPath;
  /** Path under which a text typed for it would be kept; mostly the same. */
  readonly typedAs: RecordPath;
  readonly role: Role;
  /** What to write when the edge stands at a depth. */
  readonly value: (depthM: DepthM) => unknown;
}

/** What stands above or below an edge, with its two ends. */
export interface Neighbour {
  readonly path: RecordPath;
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly is:
    | { readonly kind: 'layer'; readonly material?: Material }
    | { readonly kind: 'fill'; readonly fill: FillKind }
    | { readonly kind: 'section'; readonly diameterMm: Millimetres };
}

/** What an edge is, with what its name and its figures need. */
export type Edge =
  | { readonly kind: 'face'; readonly above?: Neighbour; readonly below?: Neighbour }
  | { readonly kind: 'holeFoot' }
  | {
      readonly kind: 'level';
      readonly state?: LevelState;
      /** What the reading is more than the depth: the stick-up, where read from the casing top. */
      readonly readMoreM: Metres;
    }
  | { readonly kind: 'strike'; readonly number: number }
  | { readonly kind: 'rise'; readonly number: number }
  | { readonly kind: 'intake' }
  | { readonly kind: 'cylinder' }
  | {
      readonly kind: 'string';
      readonly end: 'top' | 'foot';
      readonly label: string | number;
      readonly tallyM: Metres;
    }
  | { readonly kind: 'joint'; readonly label: string | number };

/** Where across the page an edge can be taken hold of. */
export type Lane = 'ground' | 'strikes' | 'rises' | 'bore' | 'annulus' | 'joints' | 'inside';

/** An edge of the drawing that can be taken hold of. */
export interface Handle {
  readonly id: string;
  readonly edge: Edge;
  readonly lane: Lane;
  readonly depthM: DepthM;
  /** Between which depths it can be moved. */
  readonly leastM: DepthM;
  readonly mostM: DepthM;
  /** The depth that snapping counts from, so that what is written is round. */
  readonly roundFromM: DepthM;
  /** Its part of the record, which the tables have a row or form for. */
  readonly row: RecordPath;
  /** Empty where it is computed from other fields and cannot be moved by itself. */
  readonly writes: readonly Write[];
  /** Diameters between which it stands in the section; absent where they are not known. */
  readonly ringMm?: Ring;
}

export interface Ring {
  readonly inner: Millimetres;
  readonly outer: Millimetres;
}

/** A write of the depth itself. */
export function depthInto(path: RecordPath, role: Role = 'own'): Write {
  return { path, typedAs: path, role, value: (depthM) => depthM };
}

/** The field that an edge is typed into. */
export function fieldOf({ writes, row }: Handle): RecordPath {
  return writes[0]?.typedAs ?? row;
}

/** The handle of an id, else one that writes a field: what was held stays held. */
export function findHandle(
  handles: readonly Handle[],
  id: string | undefined,
  paths: readonly RecordPath[] = [],
): Handle | undefined {
  return (
    handles.find((one) => one.id === id) ??
    handles.find(({ writes }) => writes.some(({ path }) => paths.includes(path)))
  );
}
