import { ok, type Result } from '../../core/base/result.ts';
import type { BinderPaper, BinderWish } from '../../core/contract/binderShape.ts';
import { binderWellOf } from '../../core/drawing/binder/binderWellOf.ts';
import type { BinderWell } from '../../core/drawing/binder/binderWell.ts';
import type { Item, Page } from '../../core/drawing/items.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import {
  asBuiltOf,
  committeeOf,
  layingOutOf,
  openWell,
  type NewestSheet,
  type OpenedWell,
  type PaperBasis,
  type PaperParts,
} from '../service/paperFiles.ts';
import { attachmentPages } from './attachmentPages.ts';
import type { WellToLay } from './messages.ts';
import type { LaidPaper, LaidWell } from './workFolder.ts';

/** Items without what only a screen asks: which field each shows. */
function bare(items: readonly Item[]): Item[] {
  return items.map((item) => {
    const { source, ...others } = item;
    const shown = source === undefined ? item : others;
    return shown.kind === 'group' ? { ...shown, items: bare(shown.items) } : shown;
  });
}

const barePage = ({ width, height, items }: Page): Page => ({ width, height, items: bare(items) });

function sheetOf(
  parts: PaperParts,
  opened: OpenedWell,
  paper: BinderPaper,
  { paper: size }: BinderWish,
): Result<NewestSheet> {
  switch (paper.kind) {
    case 'asBuilt':
      return asBuiltOf(parts, opened, { paper: size, language: paper.language });
    case 'layingOut':
      return layingOutOf(parts, opened, { language: paper.language });
    case 'committee':
      return committeeOf(parts, opened, { languages: paper.languages });
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

function factsOf({ id, newest, changedAt, reckoned }: OpenedWell): BinderWell {
  const { record, revision } = newest;
  const { model, guidelines, judgement } = reckoned;
  const { practice } = judgement;
  return binderWellOf(record, { id, revision, changedAt, model, practice, guidelines });
}

/** What papers are made with; the basis is read once for all wells of a worker. */
export interface LayingParts extends PaperParts {
  readonly basis: Result<PaperBasis>;
}

function laid(parts: LayingParts, { id }: WellToLay, wish: BinderWish): Result<Laid> {
  const opened = openWell(parts, id, parts.basis);
  if (!opened.ok) return opened;
  const well = factsOf(opened.value);
  const papers: LaidPaper[] = [];
  for (const paper of wish.papers) {
    const sheet = sheetOf(parts, opened.value, paper, wish);
    if (!sheet.ok) return sheet;
    const { pages, hatches } = sheet.value.sheet.drawing;
    papers.push({ pages: pages.map(barePage), hatches });
  }
  const counts = wish.papers.map(({ kind }, at) => ({ kind, pages: papers[at]!.pages.length }));
  const attached = attachmentPages(parts, opened.value.newest.record, well, wish);
  if (!attached.ok) return attached;
  const { length } = attached.value;
  if (length === 0) return ok({ laid: { well, papers: counts }, papers });
  const behind = { kind: 'attachments', pages: length } as const;
  return ok({
    laid: { well, papers: [...counts, behind] },
    papers: [...papers, { pages: attached.value.map(barePage), hatches: {} }],
  });
}

/**
 * The papers of a well. One that is refused, or over which the program fails, gives the sentence
 * that says so and never stops the others.
 */
export function layWell(parts: LayingParts, listed: WellToLay, wish: BinderWish): Laid {
  try {
    const made = laid(parts, listed, wish);
    return made.ok ? made.value : failedWell(listed, made.error.sentence);
  } catch (thrown) {
    return failedWell(listed, thrown instanceof Error ? thrown.message : String(thrown));
  }
}
