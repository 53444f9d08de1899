import { ok, type Result } from '../../core/base/result.ts';
import type { Finding } from '../../core/base/finding.ts';
import type { Takes } from '../../core/contract/calls.ts';
import type { PaperWish } from '../../core/contract/papersShape.ts';
import { freeMarks } from '../../core/drawing/parts/freeMarks.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { FreeMarkOnPage } from '../archive/issues.ts';
import type { ServiceParts } from './handlers.ts';
import { ownGuidelineFiles } from './ownGuidelines.ts';
import { ownPracticeFiles } from './ownPractices.ts';
import { usualTemplate, type Headed } from './ownTemplates.ts';
import { committeeFileName, layingOutFileName, paperFileName } from './paperNames.ts';
import { photoImages } from './photoImages.ts';
import { revisionNotes } from './revisionNotes.ts';
import { makeAsBuilt, makeCommittee, makeLayingOut, type Sheet } from './sheet.ts';
import { storedWell } from './stored.ts';

/** A paper of a well's newest revision. */
export interface PaperFile {
  readonly fileName: string;
  readonly pdf: Uint8Array;
  readonly findings: readonly Finding[];
  readonly record: WellRecord;
  readonly revision: number;
  /** Boxes that stand free for those who sign. */
  readonly freeMarks: readonly FreeMarkOnPage[];
  /** Something was typed after the revision that the paper shows. */
  readonly unrevised: boolean;
}

export type PaperParts = Pick<ServiceParts, 'archive' | 'fonts' | 'clock'>;

/** A well's newest revision. */
interface Newest {
  readonly record: WellRecord;
  readonly revision: number;
  readonly unrevised: boolean;
}

export function newestOf({ archive }: PaperParts, id: string): Result<Newest> {
  const stored = archive.open(id);
  if (!stored.ok) return stored;
  const well = storedWell(stored.value);
  if (!well.ok) return well;
  const mark = archive.mark(id);
  if (!mark.ok) return mark;
  const { record, revision } = well.value;
  return ok({ record, revision, unrevised: mark.value.unrevised });
}

/** The newest revision of a well, and what its papers are made with. */
function headedNewest(
  parts: PaperParts,
  id: string,
): Result<{ readonly newest: Newest; readonly headed: Headed }> {
  const newest = newestOf(parts, id);
  if (!newest.ok) return newest;
  const headed = usualTemplate(parts.archive.templates);
  return headed.ok ? ok({ newest: newest.value, headed: headed.value }) : headed;
}

/** A paper of a well's newest revision, of which no file is made yet. */
export interface NewestSheet extends Newest {
  /** Of the PDF. */
  readonly fileName: string;
  readonly sheet: Sheet;
}

/** The paper as PDF. */
export function filed({ sheet, ...newest }: NewestSheet): PaperFile {
  const { drawing, findings } = sheet;
  const freeMarksOfAll = drawing.pages.flatMap((page, at) =>
    freeMarks(page).map((free) => ({ ...free, page: at + 1 })),
  );
  return { ...newest, pdf: sheet.pdf(), findings, freeMarks: freeMarksOfAll };
}

export function asBuiltSheet(
  parts: PaperParts,
  takes: Takes<'papers.asBuilt'>,
  issued = false,
): Result<NewestSheet> {
  const { archive, fonts, clock } = parts;
  const { id, paper, orientation, columns, brokenAxis, language = 'en' } = takes;
  const { attachRecord = false } = takes;
  const stored = headedNewest(parts, id);
  if (!stored.ok) return stored;
  const { newest, headed } = stored.value;
  const { record, revision } = newest;
  const pictures = photoImages(archive, record);
  if (!pictures.ok) return pictures;
  const told = revisionNotes(archive, id, revision, language);
  if (!told.ok) return told;
  const shown = { images: pictures.value, revisions: told.value };
  const own = ownPracticeFiles(archive.practices);
  const ownGuidelines = ownGuidelineFiles(archive.guidelines);
  const shape = {
    ...(orientation && { orientation }),
    ...(columns && { columns }),
    ...(brokenAxis !== undefined && { brokenAxis }),
  };
  const made = { paper, language, fonts, madeAt: clock(), revision, attachRecord, issued };
  const fileName = paperFileName(record, paper, revision, takes.language, orientation);
  const sheet = makeAsBuilt(record, { ...made, ...headed, ...shown, ...shape, own, ownGuidelines });
  return ok({ ...newest, fileName, sheet });
}

export function layingOutSheet(
  parts: PaperParts,
  { id, language = 'en', attachRecord = false }: Takes<'papers.layingOut'>,
): Result<NewestSheet> {
  const { archive, fonts, clock } = parts;
  const stored = headedNewest(parts, id);
  if (!stored.ok) return stored;
  const { newest, headed } = stored.value;
  const { record, revision } = newest;
  const own = ownPracticeFiles(archive.practices);
  const made = { language, fonts, madeAt: clock(), revision, attachRecord };
  const sheet = makeLayingOut(record, { ...made, ...headed, own });
  const fileName = layingOutFileName(record, revision, language);
  return ok({ ...newest, fileName, sheet });
}

export function committeeSheet(
  parts: PaperParts,
  { id, languages, paper = 'A4', attachRecord = false }: Takes<'papers.committee'>,
): Result<NewestSheet> {
  const { archive, fonts, clock } = parts;
  const stored = headedNewest(parts, id);
  if (!stored.ok) return stored;
  const { newest, headed } = stored.value;
  const { record, revision } = newest;
  const own = ownPracticeFiles(archive.practices);
  const ownGuidelines = ownGuidelineFiles(archive.guidelines);
  const pictures = photoImages(archive, record);
  if (!pictures.ok) return pictures;
  const images = pictures.value;
  const made = { languages, paper, fonts, madeAt: clock(), revision, images, attachRecord };
  const sheet = makeCommittee(record, { ...made, ...headed, own, ownGuidelines });
  const fileName = committeeFileName(record, revision, languages);
  return ok({ ...newest, fileName, sheet });
}

/** The paper that is wished for; `issued` where it is to be kept as it is, which it then says. */
export function wishedSheet(
  parts: PaperParts,
  id: string,
  wish: PaperWish,
  issued = false,
): Result<NewestSheet> {
  switch (wish.kind) {
    case 'asBuilt':
      return asBuiltSheet(parts, { ...wish, id }, issued);
    case 'layingOut':
      return layingOutSheet(parts, { ...wish, id });
    case 'committee':
      return committeeSheet(parts, { ...wish, id });
  }
}
