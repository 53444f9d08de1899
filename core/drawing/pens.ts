import type { PaperMm } from '../base/units.ts';
import type { Ink, Stroke } from './items.ts';

export const black: Ink = '#000000';
export const white: Ink = '#ffffff';

/** Line widths from the ISO 128-2 series (from memory), millimetres. */
export const pens = {
  hair: 0.13,
  thin: 0.18,
  narrow: 0.25,
  medium: 0.35,
  wide: 0.5,
  frame: 0.7,
} as const;

export type Pen = keyof typeof pens;

/**
 * Lettering heights (of capitals) from the ISO 3098 series (from memory), millimetres; `plain` is the
 * smallest of a sheet that is read at arm's length, a little over 11 pt.
 */
export const letterings = {
  small: 1.8,
  normal: 2.5,
  plain: 2.6,
  large: 3.5,
  title: 5,
  number: 7,
} as const;

export type Lettering = keyof typeof letterings;

/** Distance of baselines over letter height; ISO 3098 asks 1.6 to 1.9 where accents occur. */
const linePitch = 1.65;

export function solid(pen: Pen): Stroke {
  return { ink: black, width: pens[pen] };
}

/** Narrow dashes: hidden, uncertain or gradual. */
export function dashed(pen: Pen): Stroke {
  return { ...solid(pen), dash: [1.8, 0.9] };
}

/** Long dash and dot: centre lines and match lines. */
export function chained(pen: Pen): Stroke {
  return { ...solid(pen), dash: [5, 0.8, 0.4, 0.8] };
}

/** Height of one line of text, millimetres. */
export function lineHeight(lettering: Lettering): PaperMm {
  return letterings[lettering] * linePitch;
}
