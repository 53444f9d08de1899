import type { Page } from '../../items.ts';
import { shortenedStrata } from '../../parts/descriptions.ts';
import { drawMarkBoxes, marksHeight } from '../../parts/markBoxes.ts';
import { drawTitleBlock, titleBlockHeight, type TitleFields } from '../../parts/titleBlock.ts';
import { group } from '../../shapes.ts';
import { layPanel } from './blocks.ts';
import type { Plan } from './page.ts';
import type { SheetInput } from './sheetInput.ts';
import { drawFrame } from './wellPage.ts';

/** The page of an A4 sheet that carries what does not stand beside the well. */
export function drawParticularsPage(input: SheetInput, plan: Plan, fields: TitleFields): Page {
  const { kit, paper, record, model } = input;
  const { frame } = paper;
  const foot = frame.y + frame.height;
  const marksTop = foot - titleBlockHeight - marksHeight;
  const cut = plan.views.flatMap((view) => shortenedStrata(kit, model.strata, view));
  const panel = layPanel(input, cut, frame.width, marksTop - frame.y, plan.rest === 'ownPage');
  return {
    width: paper.width,
    height: paper.height,
    items: [
      group('panel', panel.draw(frame.x, frame.y)),
      drawMarkBoxes(kit, record.marks ?? [], input.images ?? {}, frame.x, marksTop, frame.width),
      drawTitleBlock(kit, fields, frame.x, foot - titleBlockHeight),
      drawFrame(input),
    ],
  };
}
