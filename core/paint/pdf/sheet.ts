import type { jsPDF } from 'jspdf';
import type { FaceId } from '../../base/text/metrics.ts';
import type { Drawing, LinkItem, Page } from '../../drawing/items.ts';

/** PDF measures in points of 1/72 inch. */
export const pointsPerMm = 72 / 25.4;

export type FontFiles = Readonly<Record<FaceId, Uint8Array>>;

/** A document in the making, and what it holds already. */
export interface Book {
  readonly doc: jsPDF;
  readonly drawing: Drawing;
  readonly fontFiles: FontFiles;
  readonly facesIn: Set<FaceId>;
  /** Name in the document of each hatch on a page of one height. */
  readonly patternsIn: Map<string, string>;
  /** Name in the document of each picture, by its data. */
  readonly imagesIn: Map<string, string>;
  /** What of the drawing keeps the document from being archival. */
  readonly againstArchival: Set<'inkColours'>;
  /** Links by page, counted from 1. */
  readonly links: Map<number, LinkItem[]>;
}

/** The page being painted. */
export interface Sheet {
  readonly book: Book;
  readonly page: Page;
  /** Counted from 1. */
  readonly number: number;
}
