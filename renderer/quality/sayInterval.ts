import { decimalMarks, type Language } from '../../core/base/language.ts';
import { formatFixed, formatShort } from '../../core/base/numbers.ts';
import type { Interval } from '../../core/water/reckoned.ts';

/** Three digits are as many as a dose or an estimate deserves; beyond them stand noughts. */
export function sayFigure(value: number, language: Language): string {
  const mark = decimalMarks[language];
  const size = Math.abs(value);
  if (size >= 100) {
    const step = 10 ** (Math.floor(Math.log10(size)) - 2);
    return formatFixed(Math.round(value / step) * step, 0, mark);
  }
  return formatShort(value, size < 1 ? 2 : size < 10 ? 1 : 0, mark);
}

/** One figure, or two bounds where they do not read the same. */
export function sayInterval({ least, most }: Interval, language: Language): string {
  const [from, to] = [sayFigure(least, language), sayFigure(most, language)];
  return from === to ? from : `${from} – ${to}`;
}
