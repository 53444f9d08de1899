import type { jsPDF } from 'jspdf';
import type { FaceId } from '../../base/text/metrics.ts';
import type { Drawing, HatchTile, LinkItem, Page } from '../../drawing/items.ts';
import type { Content } from './content.ts';
import type { FontInDocument } from './inside.ts';

export type FontFiles = Readonly<Record<FaceId, Uint8Array>>;

/** Packs bytes as the filter FlateDecode reads them (zlib's format); one letter a byte. */
export type Deflate = (letters: string) => string;

/** What a document says of itself. */
export type About = Omit<Drawing, 'pages' | 'hatches'>;

/** A face of the document: its name there, and the glyph of each letter that was written. */
export interface FaceInDocument {
  readonly font: FontInDocument;
  /** Four hexadecimal digits by letter; empty where the face has no glyph. */
  readonly glyphs: Map<string, string>;
}

/** A document in the making, and what it holds already. */
export interface Book {
  readonly doc: jsPDF;
  readonly about: About;
  readonly fontFiles: FontFiles;
  readonly deflate: Deflate;
  readonly facesIn: Map<FaceId, FaceInDocument>;
  /** Name in the document of each hatch on a page of one height. */
  readonly patternsIn: Map<string, string>;
  /** Name in the document of each picture, by its data. */
  readonly imagesIn: Map<string, string>;
  /** What of the drawing keeps the document from being archival. */
  readonly againstArchival: Set<'inkColours'>;
  /** Links by page, counted from 1. */
  readonly links: Map<number, LinkItem[]>;
  /** Height in mm of each page, from the first on. */
  readonly heights: number[];
}

/** The page being painted. */
export interface Sheet {
  readonly book: Book;
  readonly page: Page;
  /** Counted from 1. */
  readonly number: number;
  readonly content: Content;
  readonly hatches: Readonly<Record<string, HatchTile>>;
}
