import { ok, type Result } from '../../core/base/result.ts';
import type { BinderPaper, BinderWish } from '../../core/contract/binderShape.ts';
import { binderWellOf } from '../../core/drawing/binder/binderWellOf.ts';
import type { BinderWell } from '../../core/drawing/binder/binderWell.ts';
import type { Item, Page } from '../../core/drawing/items.ts';
import { practiceOf } from '../../core/practice/choosePractice.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { guidelinesOf } from '../../core/water/guidelines/chooseGuidelines.ts';
import { ownGuidelineFiles } from '../service/ownGuidelines.ts';
import { ownPracticeFiles } from '../service/ownPractices.ts';
import {
  asBuiltSheet,
  committeeSheet,
  layingOutSheet,
  type NewestSheet,
  type PaperParts,
} from '../service/paperFiles.ts';
import { storedWell } from '../service/stored.ts';
import type { WellToLay } from './messages.ts';
import type { LaidPaper, LaidWell } from './workFolder.ts';

/** Items without what only a screen asks: which field each shows. */
function bare(items: readonly Item[]): Item[] {
  return items.map((item) => {
    const copy: Item & { source?: unknown } = { ...item };
    delete copy.source;
    return copy.kind === 'group' ? { ...copy, items: bare(copy.items) } : copy;
  });
}

const barePage = ({ width, height, items }: Page): Page => ({ width, height, items: bare(items) });

function sheetOf(
  parts: PaperParts,
  id: string,
  paper: BinderPaper,
  { paper: size }: BinderWish,
): Result<NewestSheet> {
  switch (paper.kind) {
    case 'asBuilt':
      return asBuiltSheet(parts, { id, paper: size, language: paper.language });
    case 'layingOut':
      return layingOutSheet(parts, { id, language: paper.language });
    case 'committee':
      return committeeSheet(parts, { id, languages: paper.languages });
  }
}

interface Laid {
  readonly laid: LaidWell;
  readonly papers: readonly LaidPaper[];
}

/** What the list knows of a well whose record cannot be read. */
function listedWell(listed: WellToLay): BinderWell {
  const { id, number, name, region, district, village, revision, changedAt } = listed;
  const record = { identity: { number, name }, site: { region, district, village } };
  return binderWellOf(record as WellRecord, { id, revision, changedAt });
}

/** The page that says why takes the place of the papers. */
export function failedWell(listed: WellToLay, sentence: string): Laid {
  return { laid: { well: listedWell(listed), papers: [], failed: sentence }, papers: [] };
}

function factsOf({ archive }: PaperParts, id: string): Result<BinderWell> {
  const stored = archive.open(id);
  if (!stored.ok) return stored;
  const read = storedWell(stored.value);
  if (!read.ok) return read;
  const { record, revision, changedAt } = read.value;
  const practice = practiceOf(record, ownPracticeFiles(archive.practices));
  const own = ownGuidelineFiles(archive.guidelines);
  const guidelines = guidelinesOf(record.identity?.guidelines, own);
  return ok(binderWellOf(record, { id, revision, changedAt, practice, guidelines }));
}

function laid(parts: PaperParts, { id }: WellToLay, wish: BinderWish): Result<Laid> {
  const well = factsOf(parts, id);
  if (!well.ok) return well;
  const papers: LaidPaper[] = [];
  for (const paper of wish.papers) {
    const sheet = sheetOf(parts, id, paper, wish);
    if (!sheet.ok) return sheet;
    const { pages, hatches } = sheet.value.sheet.drawing;
    papers.push({ pages: pages.map(barePage), hatches });
  }
  const counts = wish.papers.map(({ kind }, at) => ({ kind, pages: papers[at]!.pages.length }));
  return ok({ laid: { well: well.value, papers: counts }, papers });
}

/**
 * The papers of a well. One that is refused, or over which the program fails, gives the sentence
 * that says so and never stops the others.
 */
export function layWell(parts: PaperParts, listed: WellToLay, wish: BinderWish): Laid {
  try {
    const made = laid(parts, listed, wish);
    return made.ok ? made.value : failedWell(listed, made.error.sentence);
  } catch (thrown) {
    return failedWell(listed, thrown instanceof Error ? thrown.message : String(thrown));
  }
}
