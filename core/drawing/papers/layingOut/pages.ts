import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import { letter } from '../../letters.ts';
import { group } from '../../shapes.ts';
import { drawFoot, footHeight, linesWithin } from './foot.ts';
import { besideSketch, bodyOf, mostStretch, type Content, type OnePage } from './plan.ts';
import { blockGap, type SheetKit } from './sheetKit.ts';
import { drawSketch, leastSketch, sketchWidth } from './sketch.ts';
import { drawTable, headHeight, rowHeight, tableHeight, whole, type Table } from './table.ts';
import { drawTotals } from './totals.ts';

/** Everything under the head of a sheet that one page holds. */
export function drawOnePage(kit: SheetKit, content: Content, plan: OnePage): Item[] {
  const { laid, paper, strings, fills, pipes, marks, marksBeside, fillRows, totals } = content;
  const { x, y, height } = bodyOf(paper);
  const right = x + besideSketch;
  const under = plan.marksAt === 'underSketch';
  const marksHeight = tableHeight(kit, under ? marks : marksBeside);
  const sketch = under ? plan.upper - marksHeight - blockGap : plan.upper;
  const box = { x, y, width: sketchWidth, height: sketch };
  const pipesFoot = y + tableHeight(kit, pipes) + plan.pipeStretch * pipes.rows.length;
  const totalsTop = y + plan.upper + blockGap;
  const fillsTop = totalsTop + (totals === 0 ? 0 : totals + blockGap);
  return [
    drawSketch(kit, laid.model, strings, fills, box),
    drawTable(kit, pipes, { ...whole, stretch: plan.pipeStretch }, right, y),
    under
      ? drawTable(kit, marks, whole, x, y + sketch + blockGap)
      : drawTable(kit, marksBeside, whole, right, pipesFoot + blockGap),
    drawTotals(kit, laid.model, x, totalsTop),
    drawTable(kit, fillRows, { ...whole, stretch: plan.fillStretch }, x, fillsTop),
    drawFoot(kit, laid, plan.lettering, plan.writing, x, y + height),
  ];
}

/** Kept under a table that goes on, for the words that say where. */
const continuedHeight: PaperMm = 5;

/** Pages that are filled from the top, one block after the other. */
interface Flow {
  readonly pages: Item[][];
  /** Where the next block stands on the last page. */
  y: PaperMm;
}

function turnPage(flow: Flow, { paper }: Content): void {
  flow.pages.push([]);
  flow.y = bodyOf(paper).y;
}

/** How many rows from one on stand in a height, under the table's heads. */
function rowsIn(kit: SheetKit, table: Table, from: number, room: PaperMm): number {
  let [left, count] = [room - headHeight(kit, table), 0];
  for (const row of table.rows.slice(from)) {
    left -= rowHeight(kit, table, row);
    if (left < 0) return count;
    count += 1;
  }
  return count;
}

/** As many rows as stand on the page, with the words that lead from sheet to sheet. */
function drawPart(
  kit: SheetKit,
  table: Table,
  from: number,
  count: number,
  sheet: number,
  at: { readonly x: PaperMm; readonly y: PaperMm },
  stretch: PaperMm = 0,
): { items: Item[]; foot: PaperMm } {
  const { continuedFrom, continuedOn } = kit.words;
  const says = from === 0 ? '' : `${continuedFrom} ${sheet - 1}`;
  const shown = { from, to: from + count, stretch, says };
  const rows = table.rows.slice(from, from + count);
  const height = rows.reduce((all, row) => all + rowHeight(kit, table, row) + stretch, 0);
  const foot = at.y + headHeight(kit, table) + height;
  const look = { lettering: 'normal', face: 'bold' } as const;
  const goesOn = from + count < table.rows.length;
  const on = goesOn ? letter(kit, `${continuedOn} ${sheet + 1}`, at.x, foot + 4, look) : [];
  const next = foot + blockGap;
  return { items: [drawTable(kit, table, shown, at.x, at.y), ...on], foot: next };
}

/** Places a table from a row on, turning pages as it needs them. */
function flowTable(
  kit: SheetKit,
  content: Content,
  flow: Flow,
  table: Table,
  first: number,
  stretch: PaperMm = 0,
): void {
  const { x, y, height } = bodyOf(content.paper);
  for (let from = first; from < table.rows.length;) {
    const room = y + height - flow.y;
    const left = table.rows.length - from;
    const all = rowsIn(kit, table, from, room);
    const count = all >= left ? left : rowsIn(kit, table, from, room - continuedHeight);
    if (count < Math.min(2, left) && flow.y > y) {
      turnPage(flow, content);
      continue;
    }
    const shown = Math.max(1, count);
    const at = { x, y: flow.y };
    const part = drawPart(kit, table, from, shown, flow.pages.length, at, stretch);
    flow.pages.at(-1)!.push(...part.items);
    flow.y = part.foot;
    from += shown;
    if (from < table.rows.length) turnPage(flow, content);
  }
}

/** Turns the page where a height is not left. */
function ensureRoom(content: Content, flow: Flow, height: PaperMm): void {
  const body = bodyOf(content.paper);
  if (flow.y > body.y && flow.y + height > body.y + body.height) turnPage(flow, content);
}

/** How much higher the rows of a whole table may be in a height that has room to spare. */
function stretchIn(kit: SheetKit, table: Table, room: PaperMm): PaperMm {
  const spare = (room - tableHeight(kit, table)) / table.rows.length;
  return Math.max(0, Math.min(mostStretch, spare));
}

/** The first of several pages: the sketch, what is to be painted, and pipes to the foot. */
function drawFirst(kit: SheetKit, content: Content) {
  const { laid, paper, strings, fills, pipes, marks } = content;
  const { x, y, height } = bodyOf(paper);
  const marksHeight = tableHeight(kit, marks) + blockGap;
  const marked = marksHeight + leastSketch <= height;
  const sketch = marked ? height - marksHeight : height;
  const fitting = rowsIn(kit, pipes, 0, height);
  const all = fitting >= pipes.rows.length;
  const count = all ? fitting : rowsIn(kit, pipes, 0, height - continuedHeight);
  const box = { x, y, width: sketchWidth, height: sketch };
  const stretch = all ? stretchIn(kit, pipes, height) : 0;
  const beside = { x: x + besideSketch, y };
  const items = [
    drawSketch(kit, laid.model, strings, fills, box),
    ...drawPart(kit, pipes, 0, count, 1, beside, stretch).items,
    ...(marked ? [drawTable(kit, marks, whole, x, y + sketch + blockGap)] : []),
  ];
  return { items, count, marked };
}

/** Everything under the heads of a sheet that takes several pages, page by page. */
export function drawSeveralPages(kit: SheetKit, content: Content): Item[][] {
  const { laid, paper, pipesAlone, marksBeside, fillRows, totals } = content;
  const { x, y, height } = bodyOf(paper);
  const first = drawFirst(kit, content);
  const flow: Flow = { pages: [first.items, []], y };
  flowTable(kit, content, flow, pipesAlone, first.count);
  if (!first.marked) flowTable(kit, content, flow, marksBeside, 0);
  ensureRoom(content, flow, totals);
  flow.pages.at(-1)!.push(drawTotals(kit, laid.model, x, flow.y));
  flow.y += totals === 0 ? 0 : totals + blockGap;
  const least = footHeight(kit, laid, 'normal', 1);
  const stretch = stretchIn(kit, fillRows, y + height - flow.y - least - blockGap);
  flowTable(kit, content, flow, fillRows, 0, stretch);
  ensureRoom(content, flow, least);
  const foot = y + height;
  const writing = Math.min(6, 1 + linesWithin(foot - flow.y - least));
  flow.pages.at(-1)!.push(drawFoot(kit, laid, 'normal', writing, x, foot));
  return flow.pages.map((items) => [group('body', items)]);
}
