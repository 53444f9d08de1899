import { jsPDF } from 'jspdf';
import type { HatchTile, Page } from '../../drawing/items.ts';
import { writeArchivalParts } from './archival.ts';
import type { Attachment } from './attachment.ts';
import { Content } from './content.ts';
import { documentBytes, operatorsOf, usualDeflate } from './inside.ts';
import { paintItem } from './item.ts';
import { writeLinks } from './link.ts';
import { writeOutline, type Bookmark } from './outline.ts';
import { writePageLabels, type LabelRange } from './pageLabels.ts';
import { setProperties } from './properties.ts';
import type { About, Book, Deflate, FontFiles } from './sheet.ts';

/** jsPDF swaps width and height where they do not suit the orientation. */
function orientationOf({ width, height }: Page): 'landscape' | 'portrait' {
  return width > height ? 'landscape' : 'portrait';
}

function newDocument(first: Page): jsPDF {
  return new jsPDF({
    unit: 'mm',
    format: [first.width, first.height],
    orientation: orientationOf(first),
    compress: true,
    putOnlyUsedFonts: true,
    floatPrecision: 4,
  });
}

/** What a document is made with. */
export interface BookOptions {
  readonly fontFiles: FontFiles;
  /** jsPDF's own where absent, which is slower than what a host may have. */
  readonly deflate?: Deflate;
}

/** What is written behind the pages. */
export interface BookEnd {
  readonly bookmarks?: readonly Bookmark[];
  readonly labels?: readonly LabelRange[];
  readonly attachment?: Attachment;
}

/** A document that grows page by page. */
export interface OpenBook {
  /** Paints a page behind those that are there. `hatches` are those of its drawing, by name. */
  add(page: Page, hatches: Readonly<Record<string, HatchTile>>): void;
  /** The whole document, to which nothing is added any more. */
  bytes(end?: BookEnd): Uint8Array;
}

function newBook(doc: jsPDF, about: About, { fontFiles, deflate }: BookOptions): Book {
  return {
    doc,
    about,
    fontFiles,
    deflate: deflate ?? usualDeflate,
    facesIn: new Map(),
    patternsIn: new Map(),
    imagesIn: new Map(),
    againstArchival: new Set(),
    links: new Map(),
    heights: [],
  };
}

/**
 * A page's operators are packed as soon as it is painted: unpacked they take a hundred times the
 * room. What jsPDF holds as the page until it writes the document is this mark.
 */
const markOf = (page: number) => `packed page ${page}`;

/** Begins a document. The first page decides its size where jsPDF asks for one. */
export function openBook(about: About, options: BookOptions): OpenBook {
  const packed = new Map<string, string>();
  let book: Book | undefined;
  const begin = (page: Page): Book => {
    const doc = newDocument(page);
    setProperties(doc, about);
    return newBook(doc, about, options);
  };
  return {
    add(page, hatches) {
      if (book) book.doc.addPage([page.width, page.height], orientationOf(page));
      book ??= begin(page);
      const number = book.heights.push(page.height);
      const operators = operatorsOf(book.doc, number);
      const content = Content.ofPage(page.height, (words) => operators.push(words));
      const sheet = { book, page, number, content, hatches };
      page.items.forEach((item) => paintItem(sheet, item));
      packed.set(markOf(number), book.deflate(operators.join('\n')));
      operators.splice(0, operators.length, markOf(number));
    },
    bytes({ bookmarks = [], labels = [], attachment } = {}) {
      if (!book) throw new Error('A drawing without pages cannot be a PDF');
      const { deflate } = book;
      writeLinks(book);
      writeArchivalParts(book, attachment);
      writeOutline(book, bookmarks);
      writePageLabels(book, labels);
      return documentBytes(book.doc, (letters) => packed.get(letters) ?? deflate(letters));
    },
  };
}
