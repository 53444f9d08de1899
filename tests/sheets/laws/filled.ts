import type { Page } from '../../../core/drawing/items.ts';
import type { Paper } from '../../../core/drawing/paper.ts';
import type { DrawnSheet } from '../drawn.ts';
import { extentOf } from '../extent.ts';
import { placedOn } from '../placed.ts';

/** What every page has, whatever it tells. */
const standing = ['frame', 'titleBlock', 'columns', 'marks', 'practice', 'headStrip', 'scaleBars'];

/** White up to this height between two lines of a page is part of its setting, millimetres. */
const air = 12;

/** Share of a page's height, title block and marks apart, over which something stands. */
export function filledShare(page: Page, { frame }: Paper): number {
  const all = placedOn(page);
  const foot = Math.min(
    ...all
      .filter(({ groups }) => groups.includes('titleBlock') || groups.includes('marks'))
      .map(({ item }) => extentOf(item)[1]),
  );
  const spans = all
    .filter(({ groups }) => !groups.some((one) => standing.includes(one)))
    .map(({ item }) => extentOf(item))
    .map(([, top, , end]) => [top, Math.min(end, foot)] as const)
    .filter(([top, end]) => end >= top)
    .sort(([a], [b]) => a - b);
  let filled = 0;
  let reached = frame.y;
  for (const [top, end] of spans) {
    if (end <= reached) continue;
    filled += end - (top - reached <= air ? reached : top);
    reached = end;
  }
  return filled / (foot - frame.y);
}

/** Sentences on the pages of a sheet, but its last, that are filled to a lower share than `least`. */
export function thinPages({ drawing, paper }: DrawnSheet, least: number): string[] {
  return drawing.pages.slice(0, -1).flatMap((page, at) => {
    const share = filledShare(page, paper);
    return share < least ? [`page ${at + 1} is filled to ${(100 * share).toFixed(0)} %`] : [];
  });
}
