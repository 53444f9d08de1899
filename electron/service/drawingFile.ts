import { ok, refused, type Result } from '../../core/base/result.ts';
import type { Takes } from '../../core/contract/calls.ts';
import { wishedSheet, type PaperParts } from './paperFiles.ts';
import type { Sheet } from './sheet.ts';

/** A page of a paper as a file for drawing programs. */
export interface DrawingFile {
  readonly fileName: string;
  readonly data: Uint8Array;
  readonly mediaType: string;
  /** Something was typed after the revision that the page shows. */
  readonly unrevised: boolean;
}

type Wanted = Takes<'papers.drawingFile'>;

const mediaTypes: Readonly<Record<Wanted['format'], string>> = {
  svg: 'image/svg+xml',
  png: 'image/png',
  dxf: 'image/vnd.dxf',
};

const usualDpi = 300;

async function painted(
  sheet: Sheet,
  { format, page, dpi = usualDpi }: Wanted,
): Promise<Uint8Array> {
  if (format === 'svg') return new TextEncoder().encode(sheet.svg(page));
  return format === 'dxf' ? sheet.dxf(page) : sheet.png(page, dpi);
}

/** `sheet.svg` of the only page; `sheet-1.svg`, `sheet-2.svg` of several. */
function pageFileName(pdfName: string, pages: number, { format, page }: Wanted): string {
  const stem = pdfName.replace(/\.pdf$/, '');
  return pages === 1 ? `${stem}.${format}` : `${stem}-${page}.${format}`;
}

/** One page of the paper that is wished for. */
export async function drawingFile(parts: PaperParts, wanted: Wanted): Promise<Result<DrawingFile>> {
  const made = wishedSheet(parts, wanted.id, wanted.paper);
  if (!made.ok) return made;
  const { sheet, fileName, unrevised } = made.value;
  const pages = sheet.drawing.pages.length;
  if (wanted.page > pages)
    return refused(
      'noSuchPage',
      `The paper has no page ${wanted.page}, only ${pages}. Choose one of these.`,
    );
  return ok({
    fileName: pageFileName(fileName, pages, wanted),
    data: await painted(sheet, wanted),
    mediaType: mediaTypes[wanted.format],
    unrevised,
  });
}
