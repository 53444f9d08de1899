import type { Metres } from '../base/units.ts';

/** Whole centimetres: the grid that depths and lengths of a completion are laid out on. */
export type Centimetres = number;

const cmPerM = 100;

/** Lengths as measured, to the nearest centimetre. */
export function cmOf(metres: Metres): Centimetres {
  return Math.round(metres * cmPerM);
}

export function metresOf(cm: Centimetres): Metres {
  return cm / cmPerM;
}
