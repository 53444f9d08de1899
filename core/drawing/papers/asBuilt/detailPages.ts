import type { PaperMm } from '../../../base/units.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { sitingPlan } from '../../../water/siting/sitingPlan.ts';
import type { Item } from '../../items.ts';
import { again, type Kit } from '../../kit.ts';
import type { Paper } from '../../paper.ts';
import type { Block } from '../../parts/block.ts';
import { layDetail, type Detail } from '../../parts/details/detail.ts';
import { footDetail } from '../../parts/details/footDetail.ts';
import { headDetail } from '../../parts/details/headDetail.ts';
import { padDetail } from '../../parts/details/padDetail.ts';
import { slotDetail, slottedPieces } from '../../parts/details/slotDetail.ts';
import { detailWordsIn } from '../../parts/details/words/languages.ts';
import type { Piece } from '../../parts/flow/flow.ts';
import { gapPiece } from '../../parts/flow/pieces.ts';
import type { RevisionNote } from '../../parts/revisionNote.ts';
import { revisionPieces } from '../../parts/revisions.ts';
import { builtOf, type Built } from '../../parts/section/built.ts';
import { sitePlanDetail } from '../../parts/sitePlan/sitePlan.ts';
import { flowHeight, flowPages, flowWidth } from './flowPages.ts';
import type { SheetInput } from './sheetInput.ts';

const gutter: PaperMm = 6;
/** Kept for the scale bar and the air under a detail. */
const underDetail: PaperMm = 16;
/** A well with more kinds of screens than this shows the upper ones. */
const mostSlots = 2;

/** Details side by side, as high as the highest. */
function row(blocks: readonly (Block & { readonly width: PaperMm })[]): Piece[] {
  if (blocks.length === 0) return [];
  return [
    {
      height: Math.max(...blocks.map(({ height }) => height)),
      draw: (x, y) => {
        let left = x;
        return blocks.flatMap((block) => {
          const items = block.draw(left, y);
          left += block.width + gutter;
          return items;
        });
      },
    },
    gapPiece(3),
  ];
}

const present = (details: readonly (Detail | undefined)[]) =>
  details.filter((one) => one !== undefined);

/** Foot and slots beside each other, where both are known; each alone has all the width. */
function footRow(kit: Kit, well: Built, width: PaperMm): Piece[] {
  const slotted = slottedPieces(well.strings).slice(0, mostSlots);
  const half = (width - gutter) / 2;
  const foot = footDetail(kit, well, half);
  const slots = slotted.map((piece) => slotDetail(kit, piece, half));
  const blocks = present([foot, ...slots]).map((one) => layDetail(kit, one));
  return [...row(blocks.slice(0, 2)), ...row(blocks.slice(2))];
}

type Shown = Pick<WellRecord, 'site' | 'headworks'>;

function layDetails(
  kit: Kit,
  { site, headworks }: Shown,
  well: Built,
  revisions: readonly RevisionNote[] | undefined,
  paper: Paper,
): Item[][] {
  const width = flowWidth(paper);
  const outsides = well.strings.flatMap(({ pieces }) => pieces[0]?.outsideMm ?? []);
  const whole = present([
    headDetail(kit, well, headworks, width, flowHeight(paper) - underDetail),
    padDetail(kit, headworks, Math.max(0, ...outsides), width),
  ]);
  const plan = present([sitePlanDetail(kit, sitingPlan(site), width)]);
  const rows = [
    ...footRow(kit, well, width),
    ...whole.flatMap((one) => row([layDetail(kit, one)])),
    ...plan.flatMap((one) => row([layDetail(kit, one)])),
  ];
  return flowPages(paper, [...rows, ...revisionPieces(kit, revisions ?? [], width)]);
}

/** A page of details, site plan and revisions. */
export interface DetailPage {
  readonly name: 'details';
  readonly document: string;
  readonly items: readonly Item[];
}

/**
 * Pages of what the drawing of the well is too small to show, each detail at its own scale, of
 * the plan of the site and of what changed from revision to revision; none where the record has
 * none of it.
 */
export function detailPages({ kit, record, model, paper, revisions }: SheetInput): DetailPage[] {
  const { document } = detailWordsIn(kit.words.language);
  const { site, headworks } = record;
  const shown: Shown = { ...(site && { site }), ...(headworks && { headworks }) };
  const well = withoutWater(model);
  const pages = again(kit, 'details', layDetails, shown, well, revisions, paper);
  return pages.map((items) => ({ name: 'details', document, items }));
}

/** A well as it was built, without what changes from day to day. */
function withoutWater(model: WellModel): Built {
  const { bore, strings, annulus } = builtOf(model);
  return { bore, strings, annulus, levels: [] };
}
