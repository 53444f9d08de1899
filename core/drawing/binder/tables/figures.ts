import { depthFigure, rangeFigure, significantFigure } from '../../figures.ts';
import type { BinderKit } from '../binder.ts';
import type { BinderWell, BinderYield } from '../binderWell.ts';
import { medianOf } from '../statistics.ts';

export const unknown = '–';

/** A depth in metres to the centimetre, a dash where it is not known. */
export function metresOrDash(kit: BinderKit, metres: number | undefined): string {
  return metres === undefined ? unknown : depthFigure(kit, metres);
}

export function figureOrDash(kit: BinderKit, value: number | undefined): string {
  return value === undefined ? unknown : significantFigure(kit, value);
}

const basisMarks: Readonly<Record<BinderYield['basis'], string>> = {
  safe: '',
  tested: ' t',
  pump: ' p',
};

/** A yield in m³/h with the mark of how it is known. */
export function yieldFigure(kit: BinderKit, told: BinderWell['yield']): string {
  return told ? `${significantFigure(kit, told.m3h)}${basisMarks[told.basis]}` : unknown;
}

export function screensFigure(kit: BinderKit, { screens }: BinderWell): string {
  const ranges = screens.map(({ fromM, toM }) => rangeFigure(kit, fromM, toM));
  return ranges.length === 0 ? unknown : ranges.join('; ');
}

/** A median, and behind it of how many wells the value is known. */
export function medianFigure(
  kit: BinderKit,
  values: readonly (number | undefined)[],
  figure: (kit: BinderKit, value: number) => string,
): string {
  const known = values.filter((value) => value !== undefined);
  const median = medianOf(known);
  return median === undefined ? unknown : `${figure(kit, median)} (${known.length})`;
}
