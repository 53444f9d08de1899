import type { Language } from '../../core/base/language.ts';
import { ok } from '../../core/base/result.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { reads, type Handlers, type ServiceParts } from './handlers.ts';
import { ownGuidelineFiles } from './ownGuidelines.ts';
import { ownPracticeFiles } from './ownPractices.ts';
import { photoImages } from './photoImages.ts';
import { makeAsBuilt, makeLayingOut } from './sheet.ts';
import { storedWell } from './stored.ts';

/** Signs that a file's name cannot hold on one system or another, and control characters. */
const unfit = /[\\/:*?"<>|\p{Cc}]+/gu;

function numberInName({ identity }: WellRecord): string {
  return (identity?.number ?? '').replace(unfit, '-').trim() || 'well';
}

/**
 * A name for a paper's file that every system takes: well, paper, size, language where it is not
 * English, and revision. It is the same in all languages, so that the papers of a well sort together.
 */
export function paperFileName(
  record: WellRecord,
  paper: string,
  revision: number,
  language: Language = 'en',
): string {
  const kind = language === 'en' ? paper : `${paper} ${language}`;
  return `${numberInName(record)} as-built ${kind} rev ${revision}.pdf`;
}

/** The like of the laying-out sheet, which has one size. */
export function layingOutFileName(
  record: WellRecord,
  revision: number,
  language: Language = 'en',
): string {
  const kind = language === 'en' ? 'laying-out' : `laying-out ${language}`;
  return `${numberInName(record)} ${kind} rev ${revision}.pdf`;
}

/** Calls that make papers. */
export function papersHandlers({ archive, fonts, clock }: ServiceParts): Handlers<'papers'> {
  return {
    'papers.asBuilt': reads(({ id, paper, language = 'en' }) => {
      const stored = archive.open(id);
      if (!stored.ok) return stored;
      const well = storedWell(stored.value);
      if (!well.ok) return well;
      const { record, revision } = well.value;
      const mark = archive.mark(id);
      if (!mark.ok) return mark;
      const pictures = photoImages(archive, record);
      if (!pictures.ok) return pictures;
      const images = pictures.value;
      const own = ownPracticeFiles(archive.practices);
      const ownGuidelines = ownGuidelineFiles(archive.guidelines);
      const made = { paper, language, fonts, madeAt: clock(), revision, images };
      const sheet = makeAsBuilt(record, { ...made, own, ownGuidelines });
      return ok({
        fileName: paperFileName(record, paper, revision, language),
        pdf: Buffer.from(sheet.pdf()).toString('base64'),
        findings: sheet.findings,
        unrevised: mark.value.unrevised,
      });
    }),
    'papers.layingOut': reads(({ id, language = 'en' }) => {
      const stored = archive.open(id);
      if (!stored.ok) return stored;
      const well = storedWell(stored.value);
      if (!well.ok) return well;
      const { record, revision } = well.value;
      const mark = archive.mark(id);
      if (!mark.ok) return mark;
      const own = ownPracticeFiles(archive.practices);
      const sheet = makeLayingOut(record, { language, fonts, madeAt: clock(), revision, own });
      return ok({
        fileName: layingOutFileName(record, revision, language),
        pdf: Buffer.from(sheet.pdf()).toString('base64'),
        findings: sheet.findings,
        unrevised: mark.value.unrevised,
      });
    }),
  };
}
