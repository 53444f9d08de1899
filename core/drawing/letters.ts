import type { RecordPath } from '../base/recordPath.ts';
import { emForCapitals, runsOf, runWidth, textWidth, type FaceId } from '../base/text/metrics.ts';
import type { PaperMm } from '../base/units.ts';
import type { TextItem } from './items.ts';
import type { Kit } from './kit.ts';
import { black, letterings, lineHeight, type Lettering } from './pens.ts';
import { sourced } from './shapes.ts';

export interface TextLook {
  readonly lettering?: Lettering;
  readonly face?: FaceId;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Text wider than this is cut and ends in an ellipsis. */
  readonly widest?: PaperMm;
  readonly source?: RecordPath | undefined;
  /** Degrees clockwise. */
  readonly turn?: number;
}

function emOf(kit: Kit, lettering: Lettering): PaperMm {
  return emForCapitals(kit.fonts, letterings[lettering]);
}

/** Width of a text on paper, millimetres. */
export function widthOf(kit: Kit, text: string, look: TextLook = {}): PaperMm {
  return textWidth(kit.fonts, look.face ?? 'regular', text, emOf(kit, look.lettering ?? 'small'));
}

/** The text, cut with an ellipsis where it is wider than allowed. */
export function fitted(kit: Kit, text: string, widest: PaperMm, look: TextLook = {}): string {
  if (widthOf(kit, text, look) <= widest) return text;
  const letters = [...text];
  while (letters.length > 0 && widthOf(kit, `${letters.join('')}…`, look) > widest) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

const startOf = { start: 0, middle: 0.5, end: 1 } as const;

/** A line of text at a baseline, as one item for each face that it needs. */
export function letter(
  kit: Kit,
  text: string,
  x: PaperMm,
  y: PaperMm,
  look: TextLook = {},
): TextItem[] {
  const face = look.face ?? 'regular';
  const em = emOf(kit, look.lettering ?? 'small');
  const shown = look.widest === undefined ? text : fitted(kit, text, look.widest, look);
  const back = startOf[look.anchor ?? 'start'] * textWidth(kit.fonts, face, shown, em);
  const turn = look.turn ?? 0;
  const along = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)] as const;
  let at = -back;
  return runsOf(kit.fonts, face, shown)
    .filter((run) => run.text.trim() !== '')
    .map((run) => {
      const width = runWidth(kit.fonts, run, em);
      const item: TextItem = {
        kind: 'text',
        x: x + at * along[0],
        y: y + at * along[1],
        text: run.text,
        face: run.face,
        em,
        width,
        ink: black,
        ...(turn !== 0 && { turn }),
        ...sourced(look.source),
      };
      at += width;
      return item;
    });
}

function brokenWord(kit: Kit, word: string, width: PaperMm, look: TextLook): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const one of word) {
    if (piece !== '' && widthOf(kit, piece + one, look) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += one;
  }
  return [...pieces, piece];
}

/** Holds a figure and its unit on one line. */
export const bound = '\u00a0';

/**
 * Breaks a text into lines no wider than `width` millimetres, at spaces where it can. The first
 * line may be narrower than the others; it stays empty where not even a word goes in.
 */
export function wrapped(
  kit: Kit,
  text: string,
  width: PaperMm,
  look: TextLook = {},
  firstWidth: PaperMm = width,
): string[] {
  const space = widthOf(kit, ' ', look);
  const lines: string[] = [];
  let current = '';
  let filled = 0;
  const room = () => (lines.length === 0 ? firstWidth : width);
  for (const word of text.split(/[ \t\r\n]+/).filter(Boolean)) {
    const wide = widthOf(kit, word, look);
    if (current !== '' && filled + space + wide <= room()) {
      current += ` ${word}`;
      filled += space + wide;
      continue;
    }
    if (current !== '' || wide > room()) {
      if (current !== '' || firstWidth < width) lines.push(current);
    }
    const pieces = wide > room() ? brokenWord(kit, word, room(), look) : [word];
    lines.push(...pieces.slice(0, -1));
    current = pieces.at(-1)!;
    filled = current === word ? wide : widthOf(kit, current, look);
  }
  return current === '' ? lines : [...lines, current];
}

/** Lines of text under each other; `top` is the upper edge of the first line's box. */
export function lettered(
  kit: Kit,
  lines: readonly string[],
  x: PaperMm,
  top: PaperMm,
  look: TextLook = {},
): TextItem[] {
  const lettering = look.lettering ?? 'small';
  const pitch = lineHeight(lettering);
  return lines.flatMap((text, at) =>
    letter(kit, text, x, top + at * pitch + baseline(lettering), look),
  );
}

/** Distance from the upper edge of a line's box to its baseline. */
export function baseline(lettering: Lettering): PaperMm {
  return (lineHeight(lettering) + letterings[lettering]) / 2;
}
