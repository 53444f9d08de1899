import type { Language } from '../../core/base/language.ts';
import { usualOrientation, type Orientation, type PaperName } from '../../core/drawing/paper.ts';
import type { WellRecord } from '../../core/record/schema.ts';

/** Signs that a file's name cannot hold on one system or another, and control characters. */
const unfit = /[\\/:*?"<>|\p{Cc}]+/gu;

function numberInName({ identity }: WellRecord): string {
  return (identity?.number ?? '').replace(unfit, '-').trim() || 'well';
}

/** Size of a paper, how it lies where that is not usual, and its language where not English. */
export function paperKind(
  paper: PaperName,
  orientation: Orientation = usualOrientation[paper],
  language: Language = 'en',
): string {
  const lies = orientation === usualOrientation[paper] ? [] : [orientation];
  return [paper, ...lies, ...(language === 'en' ? [] : [language])].join(' ');
}

/**
 * A name for a paper's file that every system takes: well, paper, size, language where it is not
 * English, and revision. It is the same in all languages, so that the papers of a well sort together.
 */
export function paperFileName(
  record: WellRecord,
  paper: PaperName,
  revision: number,
  language: Language = 'en',
  orientation?: Orientation,
): string {
  const kind = paperKind(paper, orientation, language);
  return `${numberInName(record)} as-built ${kind} rev ${revision}.pdf`;
}

/** The like of the page that a printer is checked with. */
export function checkPageFileName(paper: string, language: Language = 'en'): string {
  return `check page ${language === 'en' ? paper : `${paper} ${language}`}.pdf`;
}

/** The like of one print file with the as-built sheets of several wells. */
export function batchFileName(wells: number, paper: string, language: Language = 'en'): string {
  return `${wells} wells as-built ${language === 'en' ? paper : `${paper} ${language}`}.pdf`;
}

/** The like of the record within a paper. */
export function recordFileName(record: WellRecord, revision?: number): string {
  const state = revision === undefined ? '' : ` rev ${revision}`;
  return `${numberInName(record)} record${state}.json`;
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

/** The like of the sheet for the committee, named by one language or two. */
export function committeeFileName(
  record: WellRecord,
  revision: number,
  languages: readonly Language[],
): string {
  const said = languages.join('-');
  const kind = said === 'en' ? 'committee' : `committee ${said}`;
  return `${numberInName(record)} ${kind} rev ${revision}.pdf`;
}
