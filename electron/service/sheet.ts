import type { Language } from '../../core/base/language.ts';
import type { Finding } from '../../core/base/finding.ts';
import type { Drawing } from '../../core/drawing/items.ts';
import type { Orientation, PaperName } from '../../core/drawing/paper.ts';
import { switchedColumns, type SwitchedColumn } from '../../core/drawing/parts/columnNames.ts';
import {
  drawAsBuilt,
  isBroken,
  planAsBuilt,
  wholePlan,
} from '../../core/drawing/papers/asBuilt.ts';
import { drawCommittee } from '../../core/drawing/papers/committee.ts';
import { drawLayingOut } from '../../core/drawing/papers/layingOut.ts';
import type { Template } from '../../core/drawing/parts/headStrip.ts';
import type { PhotoImages } from '../../core/drawing/parts/photos.ts';
import type { RevisionNote } from '../../core/drawing/parts/revisionNote.ts';
import type { Practice } from '../../core/practice/practice.ts';
import type { Attachment } from '../../core/paint/pdf/attachment.ts';
import { paintDxf } from '../../core/paint/dxf/write.ts';
import { paintPdf } from '../../core/paint/pdf/paintPdf.ts';
import { fontFaces } from '../../core/paint/svg/fontFaces.ts';
import { paintSvg } from '../../core/paint/svg/write.ts';
import { guidelinesOf } from '../../core/water/guidelines/chooseGuidelines.ts';
import type { GuidelineSet } from '../../core/water/guidelines/guidelineSet.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { deflate } from '../files/deflate.ts';
import type { ShippedFonts } from '../files/fonts.ts';
import { sha256Hex } from '../seal/hash.ts';
import { paintPng } from './pixels.ts';
import { recordHash } from '../seal/recordHash.ts';
import { printedHashes } from './photoImages.ts';
import { paperKind } from './paperNames.ts';
import { reckonWell, type OwnFiles, type ReckonedWell } from './reckonWell.ts';
import { recordAttachment } from './recordAttachment.ts';

export interface SheetOptions extends OwnFiles {
  readonly paper: PaperName;
  /** How the paper lies; as is usual for its size where absent. */
  readonly orientation?: Orientation;
  /** Columns of the log; what the record brings where absent. */
  readonly columns?: readonly SwitchedColumn[];
  /** Whether long plain stretches may be left out by a marked break; they may where absent. */
  readonly brokenAxis?: boolean;
  /** Of the sheet's own words; English where absent. */
  readonly language?: Language;
  readonly fonts: ShippedFonts;
  /** ISO 8601 moment at which the paper is made. */
  readonly madeAt: string;
  /** Revision of the record in the archive, from 1; absent for a loose file. */
  readonly revision?: number;
  /** The record reckoned already by these files; done anew where absent. */
  readonly reckoned?: ReckonedWell;
  /** Pictures that are at hand, by hash. */
  readonly images?: PhotoImages;
  /** What changed in the last revisions, in the sheet's language. */
  readonly revisions?: readonly RevisionNote[];
  /** What the organisation has on its papers. */
  readonly template?: Template;
  /** Whether this is an issue, which says so. */
  readonly issued?: boolean;
  /** Puts the record into the PDF as a file. */
  readonly attachRecord?: boolean;
}

/** A finished paper and the files that can be made of it. */
export interface Sheet {
  readonly drawing: Drawing;
  /** The model's and those of the rules. */
  readonly findings: readonly Finding[];
  /** All pages in one PDF. */
  pdf(): Uint8Array;
  /** One page, counted from 1, as a drawing file with its fonts within. */
  svg(page: number): string;
  /** The same as DXF, in which no depths are left out. */
  dxf(page: number): Uint8Array;
  /** The same in pixels, at so many dots an inch. */
  png(page: number, dpi: number): Promise<Uint8Array>;
}

/** What a paper is made with, besides its record. */
interface MadeWith {
  readonly practice: Practice;
  readonly guidelines: GuidelineSet;
}

/**
 * 32 hexadecimal digits: the same for the same record, practice, guideline values, paper, language,
 * revision, history, template and pictures at hand, and for no other. English, the general guideline
 * values and the way a size usually lies are not named, so that papers with them keep the ids that
 * they had.
 */
function paperIdOf(
  record: WellRecord,
  { practice, guidelines }: MadeWith,
  options: SheetOptions,
): string {
  const { paper, orientation, language, columns, revisions = [], template } = options;
  const { revision, images = {}, attachRecord = false } = options;
  const kind = paperKind(paper, orientation, language);
  const pictures = printedHashes(record).filter((hash) => hash in images);
  const said = [
    ...(pictures.length === 0 ? [] : [pictures]),
    ...(guidelines.id === guidelinesOf(undefined).id ? [] : [guidelines]),
    ...(columns ? [{ columns: switchedColumns.filter((one) => columns.includes(one)) }] : []),
    ...(options.brokenAxis === false ? ['whole axis'] : []),
    ...(revisions.length === 0 ? [] : [revisions]),
    ...(template ? [template] : []),
    ...(attachRecord ? ['with record'] : []),
    ...(options.issued ? ['issued'] : []),
  ];
  const named = JSON.stringify([record, practice, 'asBuilt', kind, revision ?? null, ...said]);
  return sha256Hex(named).slice(0, 32);
}

/** Style sheets by the fonts that they carry: encoding a font takes longer than laying a sheet. */
const styleSheets = new WeakMap<ShippedFonts['files'], string>();

function styleSheetOf({ files }: ShippedFonts): string {
  const known = styleSheets.get(files) ?? fontFaces(files);
  styleSheets.set(files, known);
  return known;
}

/** What a sheet's files need besides its drawing. */
interface FiledWith {
  readonly fonts: ShippedFonts;
  /** Goes into the PDF. */
  readonly attached?: Attachment | undefined;
  /** The same pages with nothing left out of their depths, where the drawing leaves out some. */
  readonly whole?: (() => Drawing) | undefined;
}

/** The files that can be made of a drawing. */
export function sheetOf(
  drawing: Drawing,
  findings: readonly Finding[],
  { fonts, attached, whole = () => drawing }: FiledWith,
): Sheet {
  return {
    drawing,
    findings,
    pdf: () =>
      paintPdf(drawing, fonts.files, { deflate, ...(attached && { attachment: attached }) }),
    svg: (page) => paintSvg(drawing, page - 1, styleSheetOf(fonts)),
    dxf: (page) => paintDxf(whole(), page - 1, fonts.metrics),
    png: (page, dpi) =>
      paintPng(paintSvg(drawing, page - 1), drawing.pages[page - 1]!.width, dpi, fonts.files),
  };
}

/** The as-built sheet of a record that was read. */
export function makeAsBuilt(record: WellRecord, options: SheetOptions): Sheet {
  const { paper, orientation, columns, brokenAxis, fonts, madeAt, revision } = options;
  const { language = 'en', images = {}, revisions, template } = options;
  const { model, guidelines, judgement } = options.reckoned ?? reckonWell(record, options);
  const made = {
    paper,
    language,
    fonts: fonts.metrics,
    madeAt,
    images,
    judgement,
    guidelines,
    paperId: paperIdOf(record, { practice: judgement.practice, guidelines }, options),
    recordHash: recordHash(record),
    ...(orientation && { orientation }),
    ...(columns && { columns }),
    ...(brokenAxis !== undefined && { brokenAxis }),
    ...(revision === undefined ? {} : { revision }),
    ...(revisions && { revisions }),
    ...(template && { template }),
    ...(options.issued && { issued: true }),
  };
  const plan = planAsBuilt(record, model, made);
  const draw = (planned: typeof plan) => drawAsBuilt(record, model, { ...made, plan: planned });
  const whole = isBroken(plan) ? () => draw(wholePlan(plan)) : undefined;
  const attached = recordAttachment(record, options);
  const findings = [...model.findings, ...judgement.findings];
  return sheetOf(draw(plan), findings, { fonts, attached, whole });
}

export type LayingOutSheetOptions = Omit<
  SheetOptions,
  'paper' | 'orientation' | 'columns' | 'brokenAxis' | 'images' | 'revisions' | 'issued'
>;

/** The laying-out sheet of a record that was read, which has one size and shows no pictures. */
export function makeLayingOut(record: WellRecord, options: LayingOutSheetOptions): Sheet {
  const { language = 'en', fonts, madeAt, revision, template } = options;
  const { model, judgement } = options.reckoned ?? reckonWell(record, options);
  const { practice, findings } = judgement;
  const said = [...(options.attachRecord ? ['with record'] : []), ...(template ? [template] : [])];
  const named = JSON.stringify([
    record,
    practice,
    'layingOut',
    language,
    revision ?? null,
    ...said,
  ]);
  const drawing = drawLayingOut(record, model, {
    language,
    fonts: fonts.metrics,
    madeAt,
    practice,
    paperId: sha256Hex(named).slice(0, 32),
    recordHash: recordHash(record),
    ...(revision === undefined ? {} : { revision }),
    ...(template && { template }),
  });
  const attached = recordAttachment(record, options);
  return sheetOf(drawing, [...model.findings, ...findings], { fonts, attached });
}

export interface CommitteeSheetOptions extends Omit<SheetOptions, 'paper' | 'language'> {
  /** One or two; two stand side by side on A3, else on a page each. */
  readonly languages: readonly Language[];
  /** A4 where absent. */
  readonly paper?: 'A4' | 'A3';
}

/** The sheet of a record that was read for the well's water users committee. */
export function makeCommittee(record: WellRecord, options: CommitteeSheetOptions): Sheet {
  const { languages, paper = 'A4', fonts, madeAt, revision } = options;
  const { images = {}, template } = options;
  const { model, guidelines, judgement } = options.reckoned ?? reckonWell(record, options);
  const { practice, findings } = judgement;
  const pictures = printedHashes(record).filter((hash) => hash in images);
  const said = [paper, languages, revision ?? null, pictures, ...(template ? [template] : [])];
  const named = JSON.stringify([record, practice, guidelines, 'committee', ...said]);
  const drawing = drawCommittee(record, model, {
    languages,
    paper,
    fonts: fonts.metrics,
    madeAt,
    images,
    practice,
    guidelines,
    paperId: sha256Hex(named).slice(0, 32),
    recordHash: recordHash(record),
    ...(revision === undefined ? {} : { revision }),
    ...(template && { template }),
  });
  const attached = recordAttachment(record, options);
  return sheetOf(drawing, [...model.findings, ...findings], { fonts, attached });
}
