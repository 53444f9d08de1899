import type { RecordPath } from '../../../base/recordPath.ts';
import type { DepthM, PaperMm } from '../../../base/units.ts';
import type { Ink, Item, Span } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { spread } from '../../labels/spread.ts';
import { lettered, widthOf, wrapped } from '../../letters.ts';
import { lineHeight, solid } from '../../pens.ts';
import { shownMiddle, shownPart, yAt } from '../../scale.ts';
import { group, line, polyline, rectangle } from '../../shapes.ts';
import { wordsRoom, type View } from '../columns.ts';

/** A word that holds over a range of depths. */
export interface Ranged {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  readonly text: string;
  readonly source: RecordPath;
  /** Of the chip that the word stands in; a word without one stands free. */
  readonly tint?: Ink;
}

/** Room for the bracket and the leader at the left, and what is kept free at the right. */
const bracketAt: PaperMm = 0.5;
const wordsAt: PaperMm = 1.6;
const rightGap: PaperMm = 0.3;
const chipPad: PaperMm = 0.4;
const mostLines = 4;

const padOf = ({ tint }: Ranged) => (tint === undefined ? 0 : chipPad);

/** Neighbours that say the same, as one. */
export function joinedRanges(ranges: readonly Ranged[]): Ranged[] {
  const joined: Ranged[] = [];
  for (const one of ranges) {
    const last = joined.at(-1);
    const goesOn = last?.text === one.text && Math.abs(last.toM - one.fromM) < 1e-6;
    if (goesOn) joined[joined.length - 1] = { ...last, toM: one.toM };
    else joined.push(one);
  }
  return joined;
}

/** Lines where the words may part: at spaces, and after hyphens where they must. */
function linesOf(kit: Kit, text: string, room: PaperMm): string[] {
  const lines =
    widthOf(kit, text) <= room ? [text] : wrapped(kit, text.replace(/-(?=\S)/g, '- '), room);
  if (lines.length <= mostLines) return lines;
  const last = lines[mostLines - 1]!.replace(/.{2}$/, '');
  return [...lines.slice(0, mostLines - 1), `${last}…`];
}

/** What the words ask of a column: room for the longest of them, and for all on one line. */
export function rangedWidths(kit: Kit, ranges: readonly Ranged[]): { word: number; line: number } {
  const around = (one: Ranged) => wordsAt + rightGap + 2 * padOf(one);
  const wordOf = (one: Ranged) => {
    const words = one.text.split(/\s+|(?<=-)/);
    return Math.max(...words.map((word) => widthOf(kit, word))) + around(one);
  };
  return {
    word: Math.max(0, ...ranges.map(wordOf)),
    line: Math.max(0, ...ranges.map((one) => widthOf(kit, one.text) + around(one))),
  };
}

interface Placed {
  readonly of: Ranged;
  readonly top: PaperMm;
  readonly foot: PaperMm;
  readonly lines: readonly string[];
  readonly middle: PaperMm;
  readonly height: PaperMm;
}

function placedOn(kit: Kit, ranges: readonly Ranged[], { width }: Span, view: View): Placed[] {
  return ranges.flatMap((of) => {
    const part = shownPart(view.axis, of.fromM, of.toM);
    if (!part) return [];
    const [top, foot] = [yAt(view.axis, part.fromM), yAt(view.axis, part.toM)];
    const lines = linesOf(kit, of.text, width - wordsAt - rightGap - 2 * padOf(of));
    const height = lines.length * lineHeight('small') + (of.tint === undefined ? 0.4 : 1);
    const middle = yAt(view.axis, shownMiddle(view.axis, part));
    return [{ of, top, foot, lines, middle, height }];
  });
}

/** Tops of the words, those of the thinnest ranges left out until the others have room. */
function topsOf(placed: readonly Placed[], view: View): Map<Placed, PaperMm> {
  const { top, foot } = wordsRoom(view);
  let kept = [...placed];
  for (;;) {
    const tops = spread(kept, top, foot);
    if (tops) return new Map(kept.map((one, at) => [one, tops[at]!]));
    const thinnest = Math.min(...kept.map((one) => one.foot - one.top));
    const leaving = kept.findIndex((one) => one.foot - one.top === thinnest);
    kept = kept.filter((_, at) => at !== leaving);
  }
}

/** The range that words hold for, as a bracket. */
function bracket({ top, foot, of: { source } }: Placed, x: PaperMm): Item {
  const inset = Math.min(0.4, (foot - top) / 4);
  const [from, to] = [top + inset, foot - inset];
  const points = [
    [x + 0.6, from],
    [x, from],
    [x, to],
    [x + 0.6, to],
  ] as const;
  return polyline(points, solid('thin'), source);
}

function drawWords(kit: Kit, one: Placed, top: PaperMm, { x, width }: Span): Item[] {
  const { of, lines, middle, height } = one;
  const { source, tint } = of;
  const tie = Math.min(Math.max(middle, top + 0.8), top + height - 0.8);
  const box = {
    x: x + wordsAt,
    y: top + 0.2,
    width: width - wordsAt - rightGap,
    height: height - 0.4,
  };
  const chip =
    tint === undefined ? [] : [rectangle(box, { fill: tint, stroke: solid('thin'), source })];
  const textTop = top + (height - lines.length * lineHeight('small')) / 2;
  return [
    line(
      [x + bracketAt, middle],
      [x + wordsAt - (tint === undefined ? 0.3 : 0), tie],
      solid('thin'),
      source,
    ),
    ...chip,
    ...lettered(kit, lines, x + wordsAt + padOf(of), textTop, { source }),
  ];
}

/** Words beside brackets over the ranges that they hold for; two ranges never share a word. */
export function drawRanged(
  kit: Kit,
  name: string,
  ranges: readonly Ranged[],
  span: Span,
  view: View,
): Item {
  const placed = placedOn(kit, ranges, span, view);
  const tops = topsOf(placed, view);
  const items = placed.map((one) => {
    const top = tops.get(one);
    const words = top === undefined ? [] : drawWords(kit, one, top, span);
    return group('ranged', [bracket(one, span.x + bracketAt), ...words], { source: one.of.source });
  });
  return group(name, items);
}
