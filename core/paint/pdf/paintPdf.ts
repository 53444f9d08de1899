import { jsPDF } from 'jspdf';
import type { Drawing, Page } from '../../drawing/items.ts';
import { writeArchivalParts } from './archival.ts';
import type { Attachment } from './attachment.ts';
import { paintItem } from './item.ts';
import { writeLinks } from './link.ts';
import { setProperties } from './properties.ts';
import type { Book, FontFiles } from './sheet.ts';

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

function newBook(drawing: Drawing, fontFiles: FontFiles, doc: jsPDF): Book {
  return {
    doc,
    drawing,
    fontFiles,
    facesIn: new Set(),
    patternsIn: new Map(),
    imagesIn: new Map(),
    againstArchival: new Set(),
    links: new Map(),
  };
}

/**
 * All pages of a drawing as one PDF, fonts within, made to follow ISO 19005 (PDF/A): part 2, or
 * part 3 with a file attached. The same drawing, fonts and file give the same bytes. Throws on a drawing at fault: no pages, a hatch or page that is named and absent, an id
 * or moment out of form.
 */
export function paintPdf(
  drawing: Drawing,
  fontFiles: FontFiles,
  attachment?: Attachment,
): Uint8Array {
  const [first] = drawing.pages;
  if (!first) throw new Error('A drawing without pages cannot be a PDF');
  const doc = newDocument(first);
  setProperties(doc, drawing);
  const book = newBook(drawing, fontFiles, doc);
  drawing.pages.forEach((page, index) => {
    if (index > 0) doc.addPage([page.width, page.height], orientationOf(page));
    page.items.forEach((item) => paintItem({ book, page, number: index + 1 }, item));
  });
  writeLinks(book);
  writeArchivalParts(book, attachment);
  return new Uint8Array(doc.output('arraybuffer'));
}
