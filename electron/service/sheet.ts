import type { Finding } from '../../core/base/finding.ts';
import type { Drawing } from '../../core/drawing/items.ts';
import { drawAsBuilt } from '../../core/drawing/papers/asBuilt.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { paintPdf } from '../../core/paint/pdf/paintPdf.ts';
import { fontFaces } from '../../core/paint/svg/fontFaces.ts';
import { paintSvg } from '../../core/paint/svg/write.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { ShippedFonts } from '../files/fonts.ts';
import { sha256Hex } from '../seal/hash.ts';

export interface SheetOptions {
  readonly paper: 'A4' | 'A3';
  readonly fonts: ShippedFonts;
  /** ISO 8601 moment at which the paper is made. */
  readonly madeAt: string;
  /** Revision of the record in the archive, from 1; absent for a loose file. */
  readonly revision?: number;
}

/** A finished paper and the files that can be made of it. */
export interface Sheet {
  readonly drawing: Drawing;
  readonly findings: readonly Finding[];
  /** All pages in one PDF. */
  pdf(): Uint8Array;
  /** One page, counted from 1, as a drawing file with its fonts within. */
  svg(page: number): string;
}

/** 32 hexadecimal digits: the same for the same record, paper and revision, and for no other. */
function paperIdOf(record: WellRecord, { paper, revision }: SheetOptions): string {
  const named = JSON.stringify([record, 'asBuilt', paper, revision ?? null]);
  return sha256Hex(named).slice(0, 32);
}

/** Style sheets by the fonts that they carry: encoding a font takes longer than laying a sheet. */
const styleSheets = new WeakMap<ShippedFonts['files'], string>();

function styleSheetOf({ files }: ShippedFonts): string {
  const known = styleSheets.get(files) ?? fontFaces(files);
  styleSheets.set(files, known);
  return known;
}

/** The as-built sheet of a record that was read. */
export function makeAsBuilt(record: WellRecord, options: SheetOptions): Sheet {
  const { paper, fonts, madeAt, revision } = options;
  const model = resolveWell(record);
  const drawing = drawAsBuilt(record, model, {
    paper,
    fonts: fonts.metrics,
    madeAt,
    paperId: paperIdOf(record, options),
    ...(revision === undefined ? {} : { revision }),
  });
  return {
    drawing,
    findings: model.findings,
    pdf: () => paintPdf(drawing, fonts.files),
    svg: (page) => paintSvg(drawing, page - 1, styleSheetOf(fonts)),
  };
}
