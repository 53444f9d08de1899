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
import { reckonWell, type OwnFiles, type ReckonedWell } from './reckonWell.ts';
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

/** A well's newest revision, and when it was made. */
function newestIn({ archive }: PaperParts, id: string) {
  const stored = archive.open(id);
  if (!stored.ok) return stored;
  const well = storedWell(stored.value);
  if (!well.ok) return well;
  const mark = archive.mark(id);
  if (!mark.ok) return mark;
  const { record, revision, changedAt } = well.value;
  return ok({ newest: { record, revision, unrevised: mark.value.unrevised }, changedAt });
}

export function newestOf(parts: PaperParts, id: string): Result<Newest> {
  const found = newestIn(parts, id);
  return found.ok ? ok(found.value.newest) : found;
}

/** What all papers of an archive are made with besides the wells. */
export interface PaperBasis extends Headed, Required<OwnFiles> {}

/** Refused where the archive's template cannot be read. */
export function paperBasis({ archive }: PaperParts): Result<PaperBasis> {
  const headed = usualTemplate(archive.templates);
  if (!headed.ok) return headed;
  const own = ownPracticeFiles(archive.practices);
  return ok({ ...headed.value, own, ownGuidelines: ownGuidelineFiles(archive.guidelines) });
}

/** A well's newest revision, read and reckoned once for all papers of it. */
export interface OpenedWell {
  readonly id: string;
  readonly newest: Newest;
  /** ISO 8601. */
  readonly changedAt: string;
  readonly reckoned: ReckonedWell;
  readonly basis: PaperBasis;
}

/** Opens a well for its papers; who opens many hands in the basis, read once. */
export function openWell(
  parts: PaperParts,
  id: string,
  basis: Result<PaperBasis> = paperBasis(parts),
): Result<OpenedWell> {
  const found = newestIn(parts, id);
  if (!found.ok) return found;
  if (!basis.ok) return basis;
  const reckoned = reckonWell(found.value.newest.record, basis.value);
  return ok({ id, ...found.value, reckoned, basis: basis.value });
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

/** The as-built sheet of an opened well. */
export function asBuiltOf(
  { archive, fonts, clock }: PaperParts,
  { id, newest, reckoned, basis }: OpenedWell,
  takes: Omit<Takes<'papers.asBuilt'>, 'id'>,
  issued = false,
): Result<NewestSheet> {
  const { paper, orientation, columns, brokenAxis, language = 'en' } = takes;
  const { attachRecord = false } = takes;
  const { record, revision } = newest;
  const pictures = photoImages(archive, record);
  if (!pictures.ok) return pictures;
  const told = revisionNotes(archive, id, revision, language);
  if (!told.ok) return told;
  const shown = { images: pictures.value, revisions: told.value };
  const shape = {
    ...(orientation && { orientation }),
    ...(columns && { columns }),
    ...(brokenAxis !== undefined && { brokenAxis }),
  };
  const made = { paper, language, fonts, madeAt: clock(), revision, attachRecord, issued };
  const fileName = paperFileName(record, paper, revision, takes.language, orientation);
  const sheet = makeAsBuilt(record, { ...made, ...basis, reckoned, ...shown, ...shape });
  return ok({ ...newest, fileName, sheet });
}

/** The laying-out sheet of an opened well. */
export function layingOutOf(
  { fonts, clock }: PaperParts,
  { newest, reckoned, basis }: OpenedWell,
  { language = 'en', attachRecord = false }: Omit<Takes<'papers.layingOut'>, 'id'>,
): Result<NewestSheet> {
  const { record, revision } = newest;
  const made = { language, fonts, madeAt: clock(), revision, attachRecord };
  const sheet = makeLayingOut(record, { ...made, ...basis, reckoned });
  const fileName = layingOutFileName(record, revision, language);
  return ok({ ...newest, fileName, sheet });
}

/** The committee's sheet of an opened well. */
export function committeeOf(
  { archive, fonts, clock }: PaperParts,
  { newest, reckoned, basis }: OpenedWell,
  { languages, paper = 'A4', attachRecord = false }: Omit<Takes<'papers.committee'>, 'id'>,
): Result<NewestSheet> {
  const { record, revision } = newest;
  const pictures = photoImages(archive, record);
  if (!pictures.ok) return pictures;
  const images = pictures.value;
  const made = { languages, paper, fonts, madeAt: clock(), revision, images, attachRecord };
  const sheet = makeCommittee(record, { ...made, ...basis, reckoned });
  const fileName = committeeFileName(record, revision, languages);
  return ok({ ...newest, fileName, sheet });
}

export function asBuiltSheet(
  parts: PaperParts,
  takes: Takes<'papers.asBuilt'>,
  basis?: Result<PaperBasis>,
): Result<NewestSheet> {
  const opened = openWell(parts, takes.id, basis);
  return opened.ok ? asBuiltOf(parts, opened.value, takes) : opened;
}

export function layingOutSheet(
  parts: PaperParts,
  takes: Takes<'papers.layingOut'>,
): Result<NewestSheet> {
  const opened = openWell(parts, takes.id);
  return opened.ok ? layingOutOf(parts, opened.value, takes) : opened;
}

export function committeeSheet(
  parts: PaperParts,
  takes: Takes<'papers.committee'>,
): Result<NewestSheet> {
  const opened = openWell(parts, takes.id);
  return opened.ok ? committeeOf(parts, opened.value, takes) : opened;
}

/** The paper that is wished for; `issued` where it is to be kept as it is, which it then says. */
export function wishedSheet(
  parts: PaperParts,
  id: string,
  wish: PaperWish,
  issued = false,
): Result<NewestSheet> {
  const opened = openWell(parts, id);
  if (!opened.ok) return opened;
  switch (wish.kind) {
    case 'asBuilt':
      return asBuiltOf(parts, opened.value, wish, issued);
    case 'layingOut':
      return layingOutOf(parts, opened.value, wish);
    case 'committee':
      return committeeOf(parts, opened.value, wish);
  }
}
