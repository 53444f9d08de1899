import type { RecordPath } from '../base/recordPath.ts';
import type { FaceId } from '../base/text/metrics.ts';
import type { DepthM, PaperMm } from '../base/units.ts';

/**
 * The closed vocabulary of a finished paper: six kinds of item, in millimetres from the page's
 * top left corner, x to the right and y down. A painter can meet nothing else. Items stand in
 * painting order. Everything is plain data: what is drawn can be written as JSON.
 */
export type Item = PathItem | TextItem | RegionItem | ImageItem | GroupItem | LinkItem;

/** One step of an outline: move, line, cubic curve, close. */
export type Segment =
  | readonly ['M', PaperMm, PaperMm]
  | readonly ['L', PaperMm, PaperMm]
  | readonly ['C', PaperMm, PaperMm, PaperMm, PaperMm, PaperMm, PaperMm]
  | readonly ['Z'];

/** `#rrggbb`. */
export type Ink = `#${string}`;

export interface Stroke {
  readonly ink: Ink;
  readonly width: PaperMm;
  /** Lengths of marks and gaps in turn. */
  readonly dash?: readonly PaperMm[];
  readonly cap?: 'butt' | 'round' | 'square';
  readonly join?: 'miter' | 'round' | 'bevel';
}

interface Sourced {
  /** Which field of the record this shows. */
  readonly source?: RecordPath;
}

/** A line or an outline. Painted fill first, then stroke. */
export interface PathItem extends Sourced {
  readonly kind: 'path';
  readonly segments: readonly Segment[];
  readonly stroke?: Stroke;
  readonly fill?: Ink;
}

/** One run of text in one face, placed by the left end of its baseline. */
export interface TextItem extends Sourced {
  readonly kind: 'text';
  readonly x: PaperMm;
  readonly y: PaperMm;
  readonly text: string;
  readonly face: FaceId;
  /** Size of the em. */
  readonly em: PaperMm;
  /** Measured before painting, from the face's advances. */
  readonly width: PaperMm;
  readonly ink: Ink;
  /** Degrees clockwise about (x, y). */
  readonly turn?: number;
}

/** An outline filled with a repeated tile, whose corner lies on the page's corner. */
export interface RegionItem extends Sourced {
  readonly kind: 'region';
  readonly segments: readonly Segment[];
  /** Key into the drawing's hatches. */
  readonly hatch: string;
  /** Painted under the hatch. */
  readonly ground?: Ink;
}

/** A picture, stretched to its box. */
export interface ImageItem extends Sourced {
  readonly kind: 'image';
  readonly x: PaperMm;
  readonly y: PaperMm;
  readonly width: PaperMm;
  readonly height: PaperMm;
  /** PNG or JPEG as a data URL. */
  readonly data: string;
  /** What a person who cannot see it is told. */
  readonly says: string;
}

/** Items that belong together, clipped to a box where one is given. */
export interface GroupItem extends Sourced {
  readonly kind: 'group';
  readonly items: readonly Item[];
  readonly clip?: Box;
  /** What the group is, for readers of the drawing file. */
  readonly name?: string;
}

/** A box that leads to a page of the drawing (from 1) or to an address. */
export interface LinkItem extends Sourced {
  readonly kind: 'link';
  readonly box: Box;
  readonly to: { readonly page: number } | { readonly address: string };
}

export interface Box {
  readonly x: PaperMm;
  readonly y: PaperMm;
  readonly width: PaperMm;
  readonly height: PaperMm;
}

/** A hatch: marks on a tile that repeats without a seam. Marks may cross the tile's edge only
 * where their repetition stands at the opposite edge too. */
export interface HatchTile {
  readonly width: PaperMm;
  readonly height: PaperMm;
  readonly marks: readonly PathItem[];
}

/** Where something stands across a page. */
export interface Span {
  readonly x: PaperMm;
  readonly width: PaperMm;
}

/** Depths that a page shows whole and true to scale, and where the first of them stands. */
export interface Stretch {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly top: PaperMm;
}

/**
 * Where depth lies in one view of a well, for those who point at it. Nothing of it is painted.
 * `yOf` and `depthOf` in `scale.ts` lead from one to the other.
 */
export interface PageAxis {
  /** The view with all that stands beside the axis. */
  readonly box: Box;
  /** Metres below ground at the axis's upper and lower end. */
  readonly fromM: DepthM;
  readonly toM: DepthM;
  /** From the top down; what lies between two of them is left out. */
  readonly stretches: readonly Stretch[];
  /** Millimetres of paper for a metre of depth. */
  readonly mmPerM: PaperMm;
  /** Millimetres of paper for a millimetre of diameter; absent where no diameter is known. */
  readonly mmPerMm?: PaperMm;
  readonly spans: Readonly<Record<'water' | 'ground' | 'section', Span>>;
}

export interface Page {
  readonly width: PaperMm;
  readonly height: PaperMm;
  readonly items: readonly Item[];
  /** One for each view of a well on the page. */
  readonly axes?: readonly PageAxis[];
}

/** A finished paper. */
export interface Drawing {
  readonly title: string;
  readonly subject: string;
  readonly author: string;
  /** BCP 47. */
  readonly language: string;
  /** ISO 8601 moment that the paper says it was made. */
  readonly madeAt: string;
  /** 32 hexadecimal digits that tell this paper from others. */
  readonly paperId: string;
  /** Number of the well that it shows. */
  readonly wellNumber?: string;
  /** Revision of the record in the archive, from 1; absent for a loose file. */
  readonly revision?: number;
  /** SHA-256 of the record that it shows, 64 hexadecimal digits. */
  readonly recordHash?: string;
  readonly pages: readonly Page[];
  readonly hatches: Readonly<Record<string, HatchTile>>;
}
