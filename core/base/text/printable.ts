import { missingGlyph } from './metrics.ts';

/** Control characters, halves of surrogate pairs, line and paragraph separators, no-characters. */
const unprintable = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\ufffe\uffff]/gu;

/** The PDF writer's font tables end at U+FFFF; screen and paper must show the same. */
const beyondFonts = /[\u{10000}-\u{10ffff}]/gu;

/** Text that any painter can write on one line, with as many letters as before. */
export function printable(text: string): string {
  return text.replace(unprintable, ' ').replace(beyondFonts, missingGlyph);
}
