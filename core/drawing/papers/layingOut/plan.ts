import type { PaperMm } from '../../../base/units.ts';
import type { Quantities } from '../../../quantities/quantity.ts';
import type { Box } from '../../items.ts';
import type { Paper } from '../../paper.ts';
import { fillSteps, type FillStep } from './fillSteps.ts';
import { footHeight, linesWithin, writingLine, type FootLettering } from './foot.ts';
import { headHeight } from './head.ts';
import type { LaidOut } from './laidOut.ts';
import { paintMarks } from './paintMarks.ts';
import { pipeSteps, type StringSteps } from './pipeSteps.ts';
import { blockGap, bodyInset, bodyWidth, type SheetKit } from './sheetKit.ts';
import { leastSketch, sketchWidth } from './sketch.ts';
import { tableHeight, type Table } from './table.ts';
import { fillTable, markTable, pipeTable } from './tables.ts';
import { totalsRow } from './totals.ts';

/** What the pages are laid from. */
export interface Content {
  readonly laid: LaidOut;
  readonly paper: Paper;
  readonly strings: readonly StringSteps[];
  readonly fills: readonly FillStep[];
  /** Beside the sketch, and over the whole width on a further page. */
  readonly pipes: Table;
  readonly pipesAlone: Table;
  /** Under the sketch, and in the other column. */
  readonly marks: Table;
  readonly marksBeside: Table;
  readonly fillRows: Table;
  readonly totals: PaperMm;
}

/** Widths of the two columns. */
export const besideSketch: PaperMm = sketchWidth + blockGap;
export const tableWidth: PaperMm = bodyWidth - besideSketch;

export function contentOf(
  kit: SheetKit,
  laid: LaidOut,
  paper: Paper,
  quantities: Quantities,
): Content {
  const { record, model } = laid;
  const strings = pipeSteps(model.strings, record.layingOut?.pipes);
  const fills = fillSteps(record, model, kit.practice, quantities);
  const marks = paintMarks(strings);
  return {
    laid,
    paper,
    strings,
    fills,
    pipes: pipeTable(kit, strings, tableWidth),
    pipesAlone: pipeTable(kit, strings, bodyWidth),
    marks: markTable(kit, marks, strings.length > 0, sketchWidth),
    marksBeside: markTable(kit, marks, strings.length > 0, tableWidth),
    fillRows: fillTable(kit, fills),
    totals: strings.length * totalsRow,
  };
}

/** Where everything stands when one page holds the sheet. */
export interface OnePage {
  readonly lettering: FootLettering;
  /** Lines to write on. */
  readonly writing: number;
  readonly marksAt: 'underSketch' | 'underPipes';
  /** Height of sketch and pipes. */
  readonly upper: PaperMm;
  readonly pipeStretch: PaperMm;
  readonly fillStretch: PaperMm;
}

/** The room under the head. */
export function bodyOf({ frame }: Paper): Box {
  const top = headHeight + blockGap;
  return {
    x: frame.x + bodyInset,
    y: frame.y + top,
    width: bodyWidth,
    height: frame.height - top - bodyInset,
  };
}

/** Rows gain no more than this: higher ones would only tear the table apart. */
export const mostStretch: PaperMm = 2.6;
const mostWriting = 4;

const sum = (...parts: PaperMm[]) => parts.reduce((all, one) => all + one, 0);

/** What is tried in turn until the sheet stands on one page. */
interface Trial {
  readonly lettering: FootLettering;
  readonly marksAt: OnePage['marksAt'];
  readonly sketch: PaperMm;
  /** Lines to write on, at least. */
  readonly writing: number;
}

/** A sketch of this height shows 45 m at 1:600. */
const goodSketch: PaperMm = 91;

const trials: readonly Trial[] = (
  [
    ['normal', goodSketch, 1],
    ['normal', leastSketch, 1],
    ['small', leastSketch, 1],
    ['small', leastSketch, 0],
  ] as const
).flatMap(([lettering, sketch, writing]) =>
  (['underPipes', 'underSketch'] as const).map((marksAt) => ({
    lettering,
    marksAt,
    sketch,
    writing,
  })),
);

/** Gives what the page has to spare to the fills, to lines to write on, and to the pipes. */
function shared({ fillRows }: Content, writing: number, needed: PaperMm, spare: PaperMm) {
  const fills = fillRows.rows.length;
  const fillStretch = Math.min(mostStretch, (spare * 0.3) / fills);
  const rest = spare - fillStretch * fills;
  const more = Math.min(mostWriting - writing, linesWithin(rest * 0.4));
  return { fillStretch, writing: writing + more, upper: needed + rest - more * writingLine };
}

function tried(kit: SheetKit, content: Content, trial: Trial): OnePage | undefined {
  const { lettering, marksAt, sketch, writing } = trial;
  const { laid, paper, pipes, marks, marksBeside, fillRows, totals } = content;
  const under = marksAt === 'underSketch';
  const pipesNeed = tableHeight(kit, pipes);
  const right = pipesNeed + (under ? 0 : blockGap + tableHeight(kit, marksBeside));
  const left = sketch + (under ? blockGap + tableHeight(kit, marks) : 0);
  const needed = Math.max(right, left);
  const lower = sum(
    totals === 0 ? 0 : totals + blockGap,
    tableHeight(kit, fillRows) + blockGap,
    footHeight(kit, laid, lettering, writing) + blockGap,
  );
  const spare = bodyOf(paper).height - lower - needed;
  if (spare < 0) return undefined;
  const given = shared(content, writing, needed, spare);
  const pipeStretch = Math.min(mostStretch, (given.upper - right) / pipes.rows.length);
  return { lettering, marksAt, pipeStretch, ...given };
}

/** How the sheet stands on one page; undefined where it does not. */
export function planOnePage(kit: SheetKit, content: Content): OnePage | undefined {
  for (const trial of trials) {
    const plan = tried(kit, content, trial);
    if (plan) return plan;
  }
  return undefined;
}
