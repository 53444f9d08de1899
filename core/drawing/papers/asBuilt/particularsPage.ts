import type { Page } from '../../items.ts';
import type { Block } from '../../parts/block.ts';
import { shortenedStrata } from '../../parts/descriptions.ts';
import type { TitleFields } from '../../parts/titleBlock.ts';
import { group } from '../../shapes.ts';
import { layPanel, type Panel } from './blocks.ts';
import type { FlowPage } from './flowParts.ts';
import { drawMarks, drawTitle, marksTop } from './foot.ts';
import type { Plan } from './page.ts';
import type { SheetInput } from './sheetInput.ts';
import { drawFrame, drawSpare, spareUnder } from './wellPage.ts';

/** What that page shows over its details. */
export function layOwnPanel(input: SheetInput, plan: Plan): Panel {
  const { kit, paper, model } = input;
  const cut = plan.views.flatMap((view) => shortenedStrata(kit, model.strata, view));
  const room = marksTop(paper) - paper.frame.y;
  return layPanel(input, cut, paper.frame.width, room, plan.rest === 'ownPage');
}

/** The page of a sheet that carries what does not stand beside the well, and details under it. */
export function drawParticularsPage(
  input: SheetInput,
  panel: Block,
  fields: TitleFields,
  details: FlowPage | undefined,
): Page {
  const { paper } = input;
  const { frame } = paper;
  return {
    width: paper.width,
    height: paper.height,
    items: [
      group('panel', panel.draw(frame.x, frame.y)),
      ...(details ? drawSpare(input, spareUnder(input, panel), details) : []),
      drawMarks(input),
      drawTitle(input, 'own', fields),
      drawFrame(input),
    ],
  };
}
