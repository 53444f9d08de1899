import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item } from '../../items.ts';
import type { Paper } from '../../paper.ts';
import type { Block } from '../../parts/block.ts';
import { drawHeadStrip, readStrip, underStrip } from '../../parts/headStrip.ts';
import { group } from '../../shapes.ts';
import { layCalendar } from './calendar.ts';
import { carePlan } from './care.ts';
import { layClosedHole } from './closedHole.ts';
import { layColumns } from './columns.ts';
import { blockGap, columnGap, type CommitteeKit } from './committeeKit.ts';
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
const stripGap: PaperMm = 2.4;

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
    return closed ? stacked([cards, layClosedHole(kit, width - at)]) : cards;
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
  const spare = height - stackedHeight([...head, well, ...deeds, columns, foot]);
  if (spare < 0) return undefined;
  const wider = layWell(kit, content, width, { brief, spare: spare * shareOfPicture });
  const rest = height - stackedHeight([...head, wider, ...deeds, foot]) - blockGap;
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
  const spare = Math.max(0, height - stackedHeight([...head, well, ...deeds]));
  const back = height - stackedHeight([...head, foot]) - blockGap;
  return [
    [...head, layWell(kit, content, width, { spare }), ...deeds],
    [...head, layColumns(kit, content, width, Math.max(0, back)), foot],
  ];
}

/** Blocks page by page. Written texts are cut before a second page is begun. */
function pagesOf(kit: CommitteeKit, content: CommitteeContent, box: Box): Block[][] {
  const { record, facts } = content;
  const banner = layBanner(kit, record, box.width);
  const disclaimer = layDisclaimer(kit, content, box.width);
  const parts: Parts = {
    head: [layTitle(kit, record, facts, box.width), ...(banner ? [banner] : [])],
    deeds: layDeeds(kit, content, box.width),
    foot: stacked([...disclaimer, layFoot(kit, record, content.images, box.width)]),
  };
  const page = onePage(kit, content, parts, box, false) ?? onePage(kit, content, parts, box, true);
  return page ? [page] : twoPages(kit, content, parts, box);
}

/** The frame under the head strip of an organisation, clear of it. */
function frameOf({ template }: CommitteeContent, paper: Paper): Box {
  if (!template) return paper.frame;
  const { frame } = underStrip(paper, readStrip);
  return { ...frame, y: frame.y + stripGap, height: frame.height - stripGap };
}

/** The sheet of one language on a paper: one page, or a second where it does not stand on one. */
export function layCommittee(kit: CommitteeKit, content: CommitteeContent, paper: Paper): Item[][] {
  const { template } = content;
  const box = frameOf(content, paper);
  const strip = template
    ? [drawHeadStrip(kit, template, underStrip(paper, readStrip), readStrip)]
    : [];
  return pagesOf(kit, content, box).map((blocks) => {
    const items = [group('body', drawDown(blocks, box.x, box.y))];
    const middle = box.x + box.width / 2;
    const turned = kit.own.direction === 'rtl' ? items.map((one) => mirrored(one, middle)) : items;
    return [...strip, ...turned];
  });
}
