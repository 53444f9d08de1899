import type { Page } from '../../items.ts';
import { shortenedStrata } from '../../parts/descriptions.ts';
import type { TitleFields } from '../../parts/titleBlock.ts';
import { group } from '../../shapes.ts';
import { layPanel } from './blocks.ts';
import { drawMarks, drawTitle, marksTop } from './foot.ts';
import type { Plan } from './page.ts';
import type { SheetInput } from './sheetInput.ts';
import { drawFrame } from './wellPage.ts';

/** The page of a sheet that carries what does not stand beside the well. */
export function drawParticularsPage(input: SheetInput, plan: Plan, fields: TitleFields): Page {
  const { kit, paper, model } = input;
  const { frame } = paper;
  const cut = plan.views.flatMap((view) => shortenedStrata(kit, model.strata, view));
  const room = marksTop(paper) - frame.y;
  const panel = layPanel(input, cut, frame.width, room, plan.rest === 'ownPage');
  return {
    width: paper.width,
    height: paper.height,
    items: [
      group('panel', panel.draw(frame.x, frame.y)),
      drawMarks(input),
      drawTitle(input, 'own', fields),
      drawFrame(input),
    ],
  };
}
