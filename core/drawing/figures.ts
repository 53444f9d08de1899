import { formatFixed, formatShort } from '../base/numbers.ts';
import type { Kit } from './kit.ts';

/** A depth or length, metres, to the centimetre. */
export function depthFigure(kit: Kit, metres: number): string {
  return formatFixed(metres, 2, kit.words.decimalMark);
}

/** A range of depths. */
export function rangeFigure(kit: Kit, fromM: number, toM: number): string {
  return `${depthFigure(kit, fromM)}–${depthFigure(kit, toM)}`;
}

/** A number with no more decimals than it has, at most `decimals`. */
export function plainFigure(kit: Kit, value: number, decimals: number): string {
  return formatShort(value, decimals, kit.words.decimalMark);
}

/** Litres to no more digits than a sack or a tape can tell. */
export function litreFigure(kit: Kit, litres: number): string {
  return plainFigure(kit, litres, litres < 10 ? 1 : 0);
}

/** `2026-03-14T09:40:00+00:00` becomes `2026-03-14 09:40`; a day alone stays a day. */
export function momentFigure(at: string): string {
  return at.slice(0, 16).replace('T', ' ');
}

export function dayFigure(at: string): string {
  return at.slice(0, 10);
}

/** A measured value to so many significant digits, without the zeros that end its decimals. */
export function significantFigure(kit: Kit, value: number, digits = 3): string {
  if (value === 0 || !Number.isFinite(value)) return plainFigure(kit, value, 0);
  const decimals = digits - 1 - Math.floor(Math.log10(Math.abs(value)));
  return plainFigure(kit, value, Math.min(9, Math.max(0, decimals)));
}
