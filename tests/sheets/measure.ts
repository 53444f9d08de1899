import * as fontkit from 'fontkit';
import { faceIds, type FaceId } from '../../core/base/text/metrics.ts';
import { fonts } from './drawn.ts';

function open(face: FaceId): fontkit.Font {
  const font = fontkit.create(Buffer.from(fonts.files[face]));
  if (!('characterSet' in font)) throw new Error('a collection');
  return font;
}

/** The shipped fonts as fontkit reads them: an opinion apart from the program's own measures. */
const opened = Object.fromEntries(faceIds.map((face) => [face, open(face)])) as Record<
  FaceId,
  fontkit.Font
>;

const known = new Map<string, number>();

/** Advance of a letter in ems. */
function advance(face: FaceId, letter: string): number {
  const key = face + letter;
  const found = known.get(key);
  if (found !== undefined) return found;
  const font = opened[face];
  const ems = font.glyphForCodePoint(letter.codePointAt(0)!).advanceWidth / font.unitsPerEm;
  known.set(key, ems);
  return ems;
}

/** Width of a text in one face, millimetres. */
export function widthByFont(face: FaceId, text: string, em: number): number {
  let ems = 0;
  for (const letter of text) ems += advance(face, letter);
  return ems * em;
}

/** Whether a face has a glyph for a letter that the PDF writer can number. */
export function faceHas(face: FaceId, letter: string): boolean {
  return (
    letter.codePointAt(0)! <= 0xffff && opened[face].hasGlyphForCodePoint(letter.codePointAt(0)!)
  );
}

/** Height of capitals over the baseline at an em, from the font file. */
export function capitalsHigh(em: number): number {
  return (em * opened.regular.capHeight) / opened.regular.unitsPerEm;
}

/** How much of the capitals' height a tail (g, p, comma) reaches under the baseline. */
const tail = 0.25;

export function lettersHigh(em: number): { above: number; below: number } {
  const above = capitalsHigh(em);
  return { above, below: tail * above };
}
