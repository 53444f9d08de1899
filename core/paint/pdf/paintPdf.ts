import type { Drawing } from '../../drawing/items.ts';
import type { Attachment } from './attachment.ts';
import { openBook } from './book.ts';
import type { Deflate, FontFiles } from './sheet.ts';

/** What a drawing's document may have besides. */
export interface PdfOptions {
  /** A file to be carried within. */
  readonly attachment?: Attachment;
  /** jsPDF's own where absent, which is slower than what a host may have. */
  readonly deflate?: Deflate;
}

/**
 * All pages of a drawing as one PDF, fonts within, made to follow ISO 19005 (PDF/A): part 2, or
 * part 3 with a file attached. The same drawing, fonts, file and deflate give the same bytes.
 * Throws on a drawing at fault: no pages, a hatch or page that is named and absent, an id or moment
 * out of form.
 */
export function paintPdf(
  drawing: Drawing,
  fontFiles: FontFiles,
  { attachment, deflate }: PdfOptions = {},
): Uint8Array {
  const book = openBook(drawing, { fontFiles, ...(deflate && { deflate }) });
  for (const page of drawing.pages) book.add(page, drawing.hatches);
  return book.bytes(attachment ? { attachment } : {});
}
