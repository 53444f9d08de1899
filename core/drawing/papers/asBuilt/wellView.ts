import type { PaperMm } from '../../../base/units.ts';
import type { Item, Span } from '../../items.ts';
import { again, type Kit } from '../../kit.ts';
import {
  calloutsFit,
  calloutsHeight,
  drawCallouts,
  type CalloutRoom,
} from '../../labels/callout.ts';
import { drawColumns } from '../../parts/columnHeads.ts';
import { wordsRoom, type View } from '../../parts/columns.ts';
import { drawDepthBreaks } from '../../parts/depthBreaks.ts';
import { drawDepthRuler } from '../../parts/depthRuler.ts';
import { drawMatchLines } from '../../parts/matchLine.ts';
import { builtOf, type Built } from '../../parts/section/built.ts';
import { casingCallouts } from '../../parts/section/casingCallouts.ts';
import { fillCallouts } from '../../parts/section/fillCallouts.ts';
import { drawSection } from '../../parts/section/section.ts';
import { drawLog } from './drawLog.ts';
import { loggedOf } from './logColumns.ts';
import type { SheetInput } from './sheetInput.ts';

/** A column of callouts as the room that they are spread in. */
function roomOf(side: CalloutRoom['side'], { x, width }: Span, view: View): CalloutRoom {
  return { side, x, width, ...wordsRoom(view) };
}

/** The words beside the section with their rooms, from the left. */
function beside(kit: Kit, well: Built, view: View) {
  const { casing, fill } = view.columns;
  return [
    [casingCallouts(kit, well, view), roomOf('left', casing, view)],
    [fillCallouts(kit, well, view), roomOf('right', fill, view)],
  ] as const;
}

function allFit(kit: Kit, well: Built, view: View): boolean {
  return beside(kit, well, view).every(([callouts, room]) => calloutsFit(kit, callouts, room));
}

/** Whether all words beside the section can stand in full on a page. */
export function callsFit({ kit, model }: SheetInput, view: View): boolean {
  return again(kit, `calls fit 1:${view.axis.scale}`, allFit, builtOf(model), view);
}

function highest(kit: Kit, well: Built, view: View): PaperMm {
  const heights = beside(kit, well, view).map(([callouts, room]) =>
    calloutsHeight(kit, callouts, room),
  );
  return Math.max(...heights);
}

/** Height that the words beside the section take in full, on the side that needs more. */
export function callsHeight({ kit, model }: SheetInput, view: View): PaperMm {
  return again(kit, `calls height 1:${view.axis.scale}`, highest, builtOf(model), view);
}

function drawCalls(kit: Kit, well: Built, view: View): Item[] {
  return beside(kit, well, view).map(([callouts, room]) => drawCallouts(kit, callouts, room));
}

/** Log and section of one page on their one depth axis, with heads, callouts and match lines. */
export function drawWell(input: SheetInput, view: View, sheet: number): Item[] {
  const { kit, model, record } = input;
  const parts = loggedOf(input);
  const built = builtOf(model);
  const on = (part: string) => `${part} on ${sheet}`;
  return [
    ...drawLog(kit, parts, view, sheet),
    again(kit, on('section'), drawSection, built, record.headworks, view),
    ...again(kit, on('calls'), drawCalls, built, view),
    again(kit, on('ruler'), drawDepthRuler, view),
    again(kit, on('columns'), drawColumns, parts.rate, view),
    again(kit, on('match lines'), drawMatchLines, view, sheet),
    again(kit, on('breaks'), drawDepthBreaks, view),
  ];
}
