import type { PaperMm } from '../../../base/units.ts';
import type { Item, Span } from '../../items.ts';
import {
  calloutsFit,
  calloutsHeight,
  drawCallouts,
  type CalloutRoom,
} from '../../labels/callout.ts';
import { drawColumns, wordsRoom, type View } from '../../parts/columns.ts';
import { drawDepthRuler } from '../../parts/depthRuler.ts';
import { drawDescriptions } from '../../parts/descriptions.ts';
import { drawGround } from '../../parts/ground.ts';
import { drawMatchLines } from '../../parts/matchLine.ts';
import { drawRate } from '../../parts/rate.ts';
import { casingCallouts } from '../../parts/section/casingCallouts.ts';
import { fillCallouts } from '../../parts/section/fillCallouts.ts';
import { drawSection } from '../../parts/section/section.ts';
import { drawWaterColumn } from '../../parts/waterColumn.ts';
import type { SheetInput } from './sheetInput.ts';

/** A column of callouts as the room that they are spread in. */
function roomOf(side: CalloutRoom['side'], { x, width }: Span, view: View): CalloutRoom {
  return { side, x, width, ...wordsRoom(view) };
}

/** Whether all words beside the section can stand in full on a page. */
export function callsFit({ kit, model }: SheetInput, view: View): boolean {
  const { casing, fill } = view.columns;
  return (
    calloutsFit(kit, casingCallouts(kit, model, view), roomOf('left', casing, view)) &&
    calloutsFit(kit, fillCallouts(kit, model, view), roomOf('right', fill, view))
  );
}

/** Height that the words beside the section take in full, on the side that needs more. */
export function callsHeight({ kit, model }: SheetInput, view: View): PaperMm {
  const { casing, fill } = view.columns;
  return Math.max(
    calloutsHeight(kit, casingCallouts(kit, model, view), roomOf('left', casing, view)),
    calloutsHeight(kit, fillCallouts(kit, model, view), roomOf('right', fill, view)),
  );
}

/** Log and section of one page on their one depth axis, with heads, callouts and match lines. */
export function drawWell({ kit, model, record }: SheetInput, view: View, sheet: number): Item[] {
  const { casing, fill } = view.columns;
  return [
    drawGround(kit, model.strata, view),
    drawDescriptions(kit, model.strata, view),
    drawWaterColumn(kit, model, view),
    drawRate(kit, model.strata, view),
    drawSection(kit, model, record.headworks, view),
    drawCallouts(kit, casingCallouts(kit, model, view), roomOf('left', casing, view)),
    drawCallouts(kit, fillCallouts(kit, model, view), roomOf('right', fill, view)),
    drawDepthRuler(kit, view),
    drawMatchLines(kit, view, sheet),
    drawColumns(kit, view),
  ];
}
