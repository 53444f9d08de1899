import type { PaperMm } from '../../../base/units.ts';
import type { Box, Item } from '../../items.ts';
import { again, type Kit } from '../../kit.ts';
import type { Paper } from '../../paper.ts';
import type { Block } from '../../parts/block.ts';
import { detailWordsIn } from '../../parts/details/words/languages.ts';
import { beginning, flowedParts, type FlowedPage } from '../../parts/flow/flow.ts';
import type { Part } from '../../parts/flow/part.ts';
import { tallyPieces } from '../../parts/tallyTable.ts';
import { solid } from '../../pens.ts';
import { group, line } from '../../shapes.ts';
import { closenesses } from './closeness.ts';
import { detailsPart } from './detailsPart.ts';
import { flowColumns, flowWidth, pad } from './flowColumns.ts';
import { besideDrawing } from './foot.ts';
import type { SheetInput } from './sheetInput.ts';
import { qualityPart, testsPart } from './waterParts.ts';
import { qualityWordsIn } from './words/qualityLanguages.ts';
import { testWordsIn } from './words/testLanguages.ts';

type FlowName = 'tally' | 'details' | 'tests' | 'quality';

/** What stands on a page that flows, by its parts. */
export type FlowPage = FlowedPage<FlowName>;

/** A line between two parts on one page. */
function parting(paper: Paper): Block {
  const { width } = paper.frame;
  return {
    height: 5,
    draw: (x, y) => {
      const end = besideDrawing(paper) ? width / 2 : width;
      return [line([x - pad, y + 2], [x - pad + end, y + 2], solid('medium'))];
    },
  };
}

function layFlow(
  _: Kit,
  manners: readonly (readonly Part<FlowName>[])[],
  paper: Paper,
  free: Box | undefined,
): FlowPage[] {
  return flowedParts(manners, { columns: flowColumns(paper), free, between: parting(paper) });
}

/** What of the tally the panel has no room for, if anything; `shown` is as the panel says it. */
function tallyParts(
  { kit, model: { strings }, paper }: SheetInput,
  shown: number | undefined,
): Part<'tally'>[] {
  if (shown === undefined) return [];
  const pieces = again(kit, 'rest of tally', tallyPieces, { strings }, flowWidth(paper), shown);
  return [{ name: 'tally', pieces }];
}

/**
 * The rest of a long tally, details, what tests tell and what samples tell, on as few pages as hold
 * them. With free room on a page of the well, the first page that is given stands there.
 * `tallyShows` is how many rows of the tally the panel shows, where that has no room for all.
 */
export function flowPages(
  input: SheetInput,
  free: Box | undefined,
  tallyShows?: number,
): FlowPage[] {
  const tally = tallyParts(input, tallyShows);
  const quality = qualityPart(input);
  const manners = closenesses.map((closeness) => [
    ...tally,
    detailsPart(input, closeness),
    testsPart(input, closeness),
    quality,
  ]);
  return again(input.kit, 'flow', layFlow, manners, input.paper, free);
}

/** Whether the details begin in a height of paper. */
export function detailsBegin(input: SheetInput, height: PaperMm): boolean {
  const part = detailsPart(input, 2);
  return part.pieces.length > 0 && beginning(part) <= height;
}

/** Height that all details take, set closely. */
export function detailsHeight(input: SheetInput): PaperMm {
  return detailsPart(input, 2).pieces.reduce((sum, { height }) => sum + height, 0);
}

/** Names of the documents on a page, for the title block. */
export function documentsOn({ parts }: FlowPage, { words: { language, tally } }: Kit): string {
  const names = {
    tally: tally.goesOn,
    details: detailWordsIn(language).document,
    tests: testWordsIn(language).document,
    quality: qualityWordsIn(language).document,
  } as const;
  return parts.map(({ name }) => names[name]).join(' · ');
}

/** The parts of a page, each in a group of its name. */
export function drawParts({ parts }: FlowPage): Item[] {
  return parts.map(({ name, items }) => group(name, items));
}
