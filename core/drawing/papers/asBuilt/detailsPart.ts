import type { PaperMm } from '../../../base/units.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { sitingPlan } from '../../../water/siting/sitingPlan.ts';
import { again, type Kit } from '../../kit.ts';
import type { Paper } from '../../paper.ts';
import type { Block } from '../../parts/block.ts';
import { layDetail, type Detail } from '../../parts/details/detail.ts';
import { footDetail, footScales } from '../../parts/details/footDetail.ts';
import { headDetail } from '../../parts/details/headDetail.ts';
import { padDetail } from '../../parts/details/padDetail.ts';
import { slotDetail, slottedPieces } from '../../parts/details/slotDetail.ts';
import type { Part, Piece } from '../../parts/flow/part.ts';
import { gapPiece } from '../../parts/flow/pieces.ts';
import type { RevisionNote } from '../../parts/revisionNote.ts';
import { revisionPieces } from '../../parts/revisions.ts';
import { builtOf, type Built } from '../../parts/section/built.ts';
import { sitePlanDetail } from '../../parts/sitePlan/sitePlan.ts';
import type { Closeness } from './closeness.ts';
import { detailsWidth, flowHeight } from './flowColumns.ts';
import type { SheetInput } from './sheetInput.ts';

const gutter: PaperMm = 6;
/** Kept for the scale bar and the air under a detail. */
const underDetail: PaperMm = 16;
/** A well with more kinds of screens than this shows the upper ones. */
const mostSlots = 2;

type Laid = Block & { readonly width: PaperMm };

/** Details side by side, as high as the highest. */
function row(blocks: readonly Laid[]): Piece[] {
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

/** Details two by two. */
function pairs(blocks: readonly Laid[]): Piece[] {
  const count = Math.ceil(blocks.length / 2);
  return Array.from({ length: count }, (_, at) => row(blocks.slice(2 * at, 2 * at + 2))).flat();
}

type Shown = Pick<WellRecord, 'site' | 'headworks'>;

/** A head drawn smaller than this says little: it takes the whole width instead. */
const smallestHead = 50;

/**
 * Foot and slots beside each other, the headworks across the width or, set closely, beside each
 * other too where that leaves them large enough.
 */
function wellDetails(
  kit: Kit,
  { headworks }: Shown,
  well: Built,
  paper: Paper,
  closeness: Closeness,
): Piece[] {
  const width = detailsWidth(paper);
  const half = (width - gutter) / 2;
  const slotted = slottedPieces(well.strings).slice(0, mostSlots);
  const outsides = well.strings.flatMap(({ pieces }) => pieces[0]?.outsideMm ?? []);
  const head = (wide: PaperMm) =>
    headDetail(kit, well, headworks, wide, flowHeight(paper) - underDetail);
  const pad = (wide: PaperMm) => padDetail(kit, headworks, Math.max(0, ...outsides), wide);
  const laid = (details: readonly (Detail | undefined)[]) =>
    present(details).map((one) => layDetail(kit, one));
  const low = closeness === 2 ? footScales.low : footScales.usual;
  const narrow = closeness === 0 ? undefined : head(half);
  const small = narrow !== undefined && narrow.bar.scale <= smallestHead;
  const beside = [
    footDetail(kit, well, half, low),
    ...slotted.map((piece) => slotDetail(kit, piece, half)),
    ...(small ? [narrow] : []),
    ...(closeness === 0 ? [] : [pad(half)]),
  ];
  const whole = [small ? undefined : head(width), closeness === 0 ? pad(width) : undefined];
  return [...pairs(laid(beside)), ...laid(whole).flatMap((one) => row([one]))];
}

function layDetails(
  kit: Kit,
  shown: Shown,
  well: Built,
  revisions: readonly RevisionNote[] | undefined,
  paper: Paper,
  closeness: Closeness,
): Piece[] {
  const width = detailsWidth(paper);
  const plan = present([sitePlanDetail(kit, sitingPlan(shown.site), width, closeness === 2)]);
  return [
    ...wellDetails(kit, shown, well, paper, closeness),
    ...plan.flatMap((one) => row([layDetail(kit, one)])),
    ...revisionPieces(kit, revisions ?? [], width),
  ];
}

/**
 * What the drawing of the well is too small to show, each detail at its own scale, the plan of the
 * site and what changed from revision to revision; nothing where the record has none of it.
 */
export function detailsPart(
  { kit, record, model, paper, revisions }: SheetInput,
  closeness: Closeness,
): Part<'details'> {
  const { site, headworks } = record;
  const shown: Shown = { ...(site && { site }), ...(headworks && { headworks }) };
  const well = withoutWater(model);
  const pieces = again(kit, 'details', layDetails, shown, well, revisions, paper, closeness);
  return { name: 'details', pieces, fills: true };
}

/** A well as it was built, without what changes from day to day. */
function withoutWater(model: WellModel): Built {
  const { bore, strings, annulus } = builtOf(model);
  return { bore, strings, annulus, levels: [] };
}
