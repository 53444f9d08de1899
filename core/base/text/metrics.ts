import type { PaperMm } from '../units.ts';

/** The faces that the program ships; `fallback` serves letters that the other two lack. */
export const faceIds = ['regular', 'bold', 'fallback'] as const;
export type FaceId = (typeof faceIds)[number];

/** What a shipped font says of itself, in font units. Made from the font file, never guessed. */
export interface FaceMetrics {
  readonly unitsPerEm: number;
  readonly capHeight: number;
  readonly ascender: number;
  /** Negative: below the baseline. */
  readonly descender: number;
  /** Advance width by code point. A code point that is absent has no glyph. */
  readonly advances: Readonly<Record<string, number>>;
}

export type Fonts = Readonly<Record<FaceId, FaceMetrics>>;

/** Stands for a letter that no shipped face has, so that the loss is seen and not silent. */
export const missingGlyph = '\u25A1';

/** A stretch of text in one face. */
export interface Run {
  readonly text: string;
  readonly face: FaceId;
}

/**
 * Size of the em in which capitals stand `heightMm` high. Lettering heights of ISO 3098 are
 * heights of capitals.
 */
export function emForCapitals(fonts: Fonts, heightMm: PaperMm): PaperMm {
  return (heightMm * fonts.regular.unitsPerEm) / fonts.regular.capHeight;
}

/** Codes that a list of advances goes up to. */
const listed = 0x2300;

/**
 * Whether a letter stays as it is in any text that is composed to NFC, as long as all others of
 * the text do so too: Latin letters without combining marks, and most signs.
 */
function staysComposed(code: number): boolean {
  const letter = String.fromCharCode(code);
  return (
    (code < 0x250 || code >= 0x2010) && !/\p{M}/u.test(letter) && letter.normalize() === letter
  );
}

/** Advances by code, in font units, of a face's most common letters; no number for the others. */
const lists = new WeakMap<FaceMetrics, Float64Array>();

/** A list is quicker asked than a record of texts. */
function listOf(face: FaceMetrics): Float64Array {
  const known = lists.get(face);
  if (known) return known;
  const list = Float64Array.from({ length: listed }, (_, code) =>
    staysComposed(code) ? (face.advances[code] ?? NaN) : NaN,
  );
  lists.set(face, list);
  return list;
}

/** Whether the face has all letters of a text, and they stand in its list. */
function isCommon(list: Float64Array, text: string): boolean {
  for (let at = 0; at < text.length; at++) if (!(list[text.charCodeAt(at)]! >= 0)) return false;
  return true;
}

function hasGlyph(face: FaceMetrics, letter: string): boolean {
  return face.advances[String(letter.codePointAt(0))] !== undefined;
}

function placed(fonts: Fonts, face: FaceId, letter: string): Run {
  if (hasGlyph(fonts[face], letter)) return { text: letter, face };
  if (hasGlyph(fonts.fallback, letter)) return { text: letter, face: 'fallback' };
  return { text: missingGlyph, face };
}

/** Splits text (composed to NFC) into runs that each have all their glyphs. */
export function runsOf(fonts: Fonts, face: FaceId, text: string): Run[] {
  if (text !== '' && isCommon(listOf(fonts[face]), text))
    return [{ text: text.replace(/\s/g, ' '), face }];
  const runs: Run[] = [];
  for (const letter of text.normalize('NFC').replace(/\s/g, ' ')) {
    const next = placed(fonts, face, letter);
    const last = runs.at(-1);
    if (last?.face === next.face) runs[runs.length - 1] = { ...last, text: last.text + next.text };
    else runs.push(next);
  }
  return runs;
}

/** Width of one run, millimetres, from the face's own advances; no kerning. */
export function runWidth(fonts: Fonts, run: Run, emMm: PaperMm): PaperMm {
  const { advances, unitsPerEm } = fonts[run.face];
  const list = listOf(fonts[run.face]);
  let units = 0;
  for (const letter of run.text) {
    const code = letter.codePointAt(0)!;
    const own = list[code]!;
    units += own >= 0 ? own : (advances[code] ?? 0);
  }
  return (units / unitsPerEm) * emMm;
}

/** Width of a text that may need several faces, millimetres. Widths of parts add up. */
export function textWidth(fonts: Fonts, face: FaceId, text: string, emMm: PaperMm): PaperMm {
  const list = listOf(fonts[face]);
  if (!isCommon(list, text)) return widthOfAny(fonts, face, text, emMm);
  const { unitsPerEm } = fonts[face];
  let ems = 0;
  for (let at = 0; at < text.length; at++) ems += list[text.charCodeAt(at)]! / unitsPerEm;
  return ems * emMm;
}

/** The same of any text, with letters of other scripts, in other faces, or that no face has. */
function widthOfAny(fonts: Fonts, face: FaceId, text: string, emMm: PaperMm): PaperMm {
  const first = fonts[face];
  const { fallback } = fonts;
  let ems = 0;
  for (const letter of text.normalize('NFC')) {
    const code = letter.codePointAt(0)!;
    const own = first.advances[code];
    const other = own === undefined ? fallback.advances[code] : undefined;
    if (own !== undefined) ems += own / first.unitsPerEm;
    else if (other !== undefined) ems += other / fallback.unitsPerEm;
    else ems += advanceOfStranger(first, letter) / first.unitsPerEm;
  }
  return ems * emMm;
}

/** White space of any kind is set as a space; what no face has, as the sign for it. */
function advanceOfStranger(face: FaceMetrics, letter: string): number {
  const stand = /\s/.test(letter) ? ' ' : missingGlyph;
  return face.advances[String(stand.codePointAt(0))] ?? 0;
}
