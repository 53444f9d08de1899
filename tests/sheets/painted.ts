import type { Language } from '../../core/base/language.ts';
import { paintPdf } from '../../core/paint/pdf/paintPdf.ts';
import { paintSvg } from '../../core/paint/svg/write.ts';
import type { PaperName } from '../../core/drawing/paper.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { ReadPage } from '../reading/page.ts';
import { readPdf } from '../reading/pdf.ts';
import { readSvg } from '../reading/svg.ts';
import { drawSheet, fonts } from './drawn.ts';

/** A sheet painted for paper and screen, and what independent readers find on both. */
export interface PaintedSheet {
  readonly file: Uint8Array;
  /** By pdfjs. */
  readonly pdf: readonly ReadPage[];
  /** By jsdom. */
  readonly svg: readonly ReadPage[];
}

export async function paintSheet(
  record: WellRecord,
  paper: PaperName,
  language: Language = 'en',
): Promise<PaintedSheet> {
  const { drawing } = drawSheet(record, paper, language);
  const file = paintPdf(drawing, fonts.files);
  const svg = drawing.pages.map((_, at) => readSvg(paintSvg(drawing, at)));
  return { file, pdf: await readPdf(file), svg };
}
