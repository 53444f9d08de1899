import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item } from '../../items.ts';
import type { Piece } from '../../parts/flow/flow.ts';
import { textPieces } from '../../parts/flow/pieces.ts';
import type {
  BinderContent,
  BinderKit,
  LaidPart,
  PartMark,
  Places,
  SectionChoice,
} from '../binder.ts';
import { binderPage, bodyOf, partTitle, partTitleHeight, under } from '../page.ts';
import { axisWidth, drawDistances, drawElevations, lineHeightBelow } from './axes.ts';
import { drawColumn, nameHeight } from './column.ts';
import { columnPitch, sectionFrame } from './frame.ts';
import { drawJoins } from './joins.ts';
import { legendPieces, nothing, sectionTable, statements } from './pieces.ts';
import { sectionLine, type SectionLine, type StandingWell } from './sectionLine.ts';

/** Wells of one page; the next page begins with the last of the one before. */
function pagesOfWells(wells: readonly StandingWell[], most: number): StandingWell[][] {
  const pages: StandingWell[][] = [];
  for (let at = 0; at === 0 || at + 1 < wells.length; at += most - 1)
    pages.push(wells.slice(at, at + most));
  return pages;
}

const heightOf = (pieces: readonly Piece[]) => pieces.reduce((sum, { height }) => sum + height, 0);

function drawDown(pieces: readonly Piece[], x: PaperMm, y: PaperMm): Item[] {
  let top = y;
  return pieces.flatMap((piece) => {
    const items = piece.draw(x, top);
    top += piece.height;
    return items;
  });
}

const gap: PaperMm = 3;
/** What a plot is never lower than; a long table and legend give way before. */
const leastPlot: PaperMm = 40;

/** Names, plot, distances, then figures and legend. */
function drawSection(
  kit: BinderKit,
  section: SectionLine,
  wells: readonly StandingWell[],
  choice: SectionChoice,
  places: Places,
  box: Box,
): Item[] {
  const { x, width } = box;
  const table = sectionTable(kit, wells, places, width);
  const legend = legendPieces(kit, wells, width);
  const statedOf = (says: string) => textPieces(kit, says, width);
  const plotBox = (height: PaperMm, y: PaperMm): Box => ({
    x: x + axisWidth,
    y,
    width: width - axisWidth,
    height,
  });
  const joined = (choice.joins ?? []).length > 0;
  const frameOf = (height: PaperMm, y: PaperMm) => sectionFrame(wells, plotBox(height, y));
  // Scales stand in the statements: they take as many lines whatever they come to, or one more.
  const trial = statedOf(statements(kit, section, frameOf(leastPlot, box.y), joined));
  const statedHeight = heightOf(trial) + textPieces(kit, 'x', width)[0]!.height;
  const rest = heightOf(table) + heightOf(legend) + 2 * gap;
  const room = box.height - statedHeight - nameHeight - lineHeightBelow - rest;
  const top = box.y + statedHeight + nameHeight;
  const frame = frameOf(Math.max(leastPlot, room), top);
  const foot = frame.box.y + frame.box.height + lineHeightBelow;
  return [
    ...drawDown(statedOf(statements(kit, section, frame, joined)), x, box.y),
    drawElevations(kit, frame, section),
    drawJoins(frame, wells, choice.joins ?? []),
    ...wells.map((one, at) => drawColumn(kit, frame, one, frame.middles[at]!)),
    drawDistances(kit, frame, wells),
    ...drawDown(table, x, foot),
    ...drawDown(legend, x, foot + heightOf(table) + gap),
  ];
}

/** Wells beside each other that a page has room for, with the table of their figures. */
const mostWells = 10;

/** Sections through chosen wells, each to its own stated scales. */
export function laySections(kit: BinderKit, content: BinderContent, places: Places): LaidPart {
  const { own } = kit;
  const body = bodyOf(kit);
  const box = under(body, partTitleHeight);
  const pages: LaidPart['pages'][number][] = [];
  const marks: PartMark[] = [];
  const most = Math.min(mostWells, Math.floor((box.width - axisWidth) / columnPitch));
  content.sections.forEach((choice, at) => {
    const title = choice.title ?? filled(own.section.title, { n: String(at + 1) });
    marks.push({ title, page: pages.length });
    const section = sectionLine(choice, content.wells);
    const named = partTitle(kit, title, body);
    if (section.wells.length === 0) {
      const says = drawDown(textPieces(kit, nothing(kit, section), box.width), box.x, box.y);
      pages.push(binderPage(kit, content, own.parts.sections, [named, ...says]));
      return;
    }
    for (const wells of pagesOfWells(section.wells, most)) {
      const items = drawSection(kit, section, wells, choice, places, box);
      pages.push(binderPage(kit, content, own.parts.sections, [named, ...items]));
    }
  });
  return { pages, marks };
}
