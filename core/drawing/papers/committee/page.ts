import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item } from '../../items.ts';
import type { Paper } from '../../paper.ts';
import type { Block } from '../../parts/block.ts';
import { drawHeadStrip, lowStrip, underStrip } from '../../parts/headStrip.ts';
import { group } from '../../shapes.ts';
import { layCalendar } from './calendar.ts';
import { carePlan } from './care.ts';
import { layClosedHole } from './closedHole.ts';
import { layColumns } from './columns.ts';
import { close, closest, columnGap, roomy, type CommitteeKit } from './committeeKit.ts';
import type { CommitteeContent } from './content.ts';
import { factsOf } from './facts.ts';
import { layFigures } from './figures.ts';
import { layFoot } from './foot.ts';
import { layKeepAway } from './keepAway.ts';
import { mirrored } from './mirror.ts';
import { drawPicture } from './picture/picture.ts';
import { drawDown, stacked, stackedHeight } from './stack.ts';
import { closedState } from './stages.ts';
import { linesOf, pitch, saidLines } from './text.ts';
import { layBanner, layTitle } from './titleBlock.ts';
import { yieldOf } from './yieldOf.ts';

const pictureWidth: PaperMm = 78;
const leastPicture: PaperMm = 70;
/** A page with room to spare gives it to the picture up to here, and then to notes. */
const mostPicture: PaperMm = 105;
const shareOfPicture = 0.6;
/** Between the head strip of an organisation and the sheet's own head. */
const stripGap: PaperMm = 1.4;

/** The picture beside the figures; higher than it must be where there is room to spare. */
function layWell(
  kit: CommitteeKit,
  { record, model }: CommitteeContent,
  width: PaperMm,
  { spare = 0, brief = false }: { readonly spare?: PaperMm; readonly brief?: boolean } = {},
): Block {
  const facts = factsOf(record, model);
  const given = yieldOf(record, model, kit.practice);
  const at = pictureWidth + columnGap;
  const closed = closedState(record) !== undefined;
  const figures = (height: PaperMm) => {
    const cards = layFigures(kit, record, facts, given, width - at, { brief, height });
    return closed ? stacked(kit, [cards, layClosedHole(kit, width - at)]) : cards;
  };
  const least = Math.max(leastPicture, figures(0).height);
  const height = Math.max(least, Math.min(mostPicture, least + spare));
  return {
    height,
    draw: (x, y) => [
      drawPicture(kit, record, model, facts, { x, y, width: pictureWidth, height }),
      ...figures(height).draw(x + at, y),
    ],
  };
}

/** The disclaimer of an organisation, over the boxes that are signed in. */
function layDisclaimer(kit: CommitteeKit, { template }: CommitteeContent, width: PaperMm): Block[] {
  const lines = linesOf(kit, template?.disclaimer ?? '', width);
  if (lines.length === 0) return [];
  const draw = (x: PaperMm, y: PaperMm) => [group('disclaimer', saidLines(kit, lines, x, y))];
  return [{ height: lines.length * pitch, draw }];
}

/** What is done and what is not, of a well that somebody draws from. */
function layDeeds(kit: CommitteeKit, { record }: CommitteeContent, width: PaperMm): Block[] {
  if (closedState(record) !== undefined) return [];
  const calendar = layCalendar(kit, carePlan(record.pump?.kind), width);
  return [calendar, layKeepAway(kit, record, width)];
}

interface Parts {
  readonly head: readonly Block[];
  readonly deeds: readonly Block[];
  readonly foot: Block;
}

/** Everything on one page, with what is to spare for the picture and for notes; none where it is not. */
function onePage(
  kit: CommitteeKit,
  content: CommitteeContent,
  { head, deeds, foot }: Parts,
  { width, height }: Box,
  brief: boolean,
): Block[] | undefined {
  const well = layWell(kit, content, width, { brief });
  const columns = layColumns(kit, content, width);
  const spare = height - stackedHeight(kit, [...head, well, ...deeds, columns, foot]);
  if (spare < 0) return undefined;
  const wider = layWell(kit, content, width, { brief, spare: spare * shareOfPicture });
  const rest = height - stackedHeight(kit, [...head, wider, ...deeds, foot]) - kit.spacing.gap;
  return [...head, wider, ...deeds, layColumns(kit, content, width, rest), foot];
}

/** A front that hangs on the wall, and a back with people, tests of the water and marks. */
function twoPages(
  kit: CommitteeKit,
  content: CommitteeContent,
  { head, deeds, foot }: Parts,
  { width, height }: Box,
): Block[][] {
  const well = layWell(kit, content, width);
  const spare = Math.max(0, height - stackedHeight(kit, [...head, well, ...deeds]));
  const back = height - stackedHeight(kit, [...head, foot]) - kit.spacing.gap;
  return [
    [...head, layWell(kit, content, width, { spare }), ...deeds],
    [...head, layColumns(kit, content, width, Math.max(0, back)), foot],
  ];
}

function partsOf(kit: CommitteeKit, content: CommitteeContent, width: PaperMm): Parts {
  const { record, facts, images } = content;
  const banner = layBanner(kit, record, width);
  const disclaimer = layDisclaimer(kit, content, width);
  return {
    head: [layTitle(kit, record, facts, width), ...(banner ? [banner] : [])],
    deeds: layDeeds(kit, content, width),
    foot: stacked(kit, [...disclaimer, layFoot(kit, record, images, width)]),
  };
}

/** The pages of a sheet, each with its blocks, and how these are spaced. */
interface Laid {
  readonly kit: CommitteeKit;
  readonly pages: readonly (readonly Block[])[];
}

/** Blocks are set closer before written texts are cut, and these before a second page is begun. */
const tries = [
  { spacing: roomy, brief: false },
  { spacing: close, brief: false },
  { spacing: roomy, brief: true },
  { spacing: close, brief: true },
  { spacing: closest, brief: true },
];

function laidOut(kit: CommitteeKit, content: CommitteeContent, box: Box): Laid {
  for (const { spacing, brief } of tries) {
    const tried = { ...kit, spacing };
    const page = onePage(tried, content, partsOf(tried, content, box.width), box, brief);
    if (page) return { kit: tried, pages: [page] };
  }
  return { kit, pages: twoPages(kit, content, partsOf(kit, content, box.width), box) };
}

/** The sheet of one language on a paper: one page, or a second where it does not stand on one. */
export function layCommittee(kit: CommitteeKit, content: CommitteeContent, paper: Paper): Item[][] {
  const { template } = content;
  const look = template && lowStrip(template);
  const under = look ? underStrip(paper, look) : paper;
  const gap = look ? stripGap : 0;
  const { x, y, width, height } = under.frame;
  const box = { x, y: y + gap, width, height: height - gap };
  const strip = template ? [drawHeadStrip(kit, template, under, look)] : [];
  const laid = laidOut(kit, content, box);
  return laid.pages.map((blocks) => {
    const items = [group('body', drawDown(laid.kit, blocks, box.x, box.y))];
    const middle = box.x + box.width / 2;
    const turned = kit.own.direction === 'rtl' ? items.map((one) => mirrored(one, middle)) : items;
    return [...strip, ...turned];
  });
}
