import { decimalMarks, type Language } from '../base/language.ts';
import { formatDepth, formatFixed, formatShort } from '../base/numbers.ts';
import { catalogueOf } from '../practice/catalogue.ts';
import type { Missing, Quantity, QuantityInput, QuantityUnit } from './quantity.ts';
import { quantityUnits } from './quantity.ts';
import { english } from './words/en.ts';
import { french } from './words/fr.ts';
import { portuguese } from './words/pt.ts';
import type { QuantityWords } from './words/words.ts';

const languageWords: Readonly<Record<Language, QuantityWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of a language for quantities. */
export function quantityWords(language: Language): QuantityWords {
  return languageWords[language];
}

const counts: readonly QuantityUnit[] = ['sacks', 'pieces', 'trips'];

/** Three digits are as many as a hole's diameter gives; beyond them stand noughts. */
function toThreeDigits(value: number): number {
  const step = 10 ** Math.max(0, Math.floor(Math.log10(value)) - 2);
  return Math.round(value / step) * step;
}

/** An amount without its unit, with no more digits than it deserves. */
export function sayFigure(value: number, unit: QuantityUnit, language: Language): string {
  const mark = decimalMarks[language];
  if (counts.includes(unit)) return formatFixed(value, 0, mark);
  if (unit === 'm') return formatDepth(value, mark);
  if (value < 0.1) return formatShort(value, 2, mark);
  return value < 10 ? formatShort(value, 1, mark) : formatFixed(toThreeDigits(value), 0, mark);
}

/** The word of a unit beside an amount. */
export function sayUnit(value: number, unit: QuantityUnit, language: Language): string {
  const { units, isSingular } = quantityWords(language);
  return isSingular(value) ? units[unit].one : units[unit].many;
}

/** An amount with its unit, as in `247 kg` or `5 sacks`. */
export function sayAmount({ value, unit }: Quantity, language: Language): string {
  return `${sayFigure(value, unit, language)}\u00a0${sayUnit(value, unit, language)}`;
}

function isOwnUnit(unit: string): unit is QuantityUnit {
  return quantityUnits.some((one) => one === unit);
}

/** Measures as they are read, what was reckoned from them to four digits. */
function decimalsOf(value: number, unit: string): number {
  if (unit === 'm' || unit === 'mm') return 2;
  return Math.max(0, 3 - Math.floor(Math.log10(Math.max(Math.abs(value), 1))));
}

/** An input as the formula writes it, as in `D = 165 mm`; a plain number has no unit. */
export function sayInput({ symbol, value, unit }: QuantityInput, language: Language): string {
  const figure = formatShort(value, decimalsOf(value, unit), decimalMarks[language]);
  const word = isOwnUnit(unit) ? sayUnit(value, unit, language) : unit;
  return `${symbol}\u00a0=\u00a0${figure}${word === '1' ? '' : `\u00a0${word}`}`;
}

function sayZone({ zone }: Quantity, language: Language): string[] {
  if (!zone) return [];
  const { fromM, toM, fill } = zone;
  const mark = decimalMarks[language];
  const range = `${formatDepth(fromM, mark)}–${formatDepth(toM, mark)} m`;
  if (fill === undefined) return [range];
  const { unrecorded } = quantityWords(language);
  return [fill === 'unrecorded' ? unrecorded : catalogueOf(language).words[fill], range];
}

function sayPipe({ pipe }: Quantity, language: Language): string[] {
  if (!pipe) return [];
  const { kind, material, outsideMm, upperOutsideMm, wallMm } = pipe;
  const millimetres = (value: number | undefined) =>
    value === undefined ? undefined : formatShort(value, 2, decimalMarks[language]);
  const ends = [outsideMm, upperOutsideMm].map(millimetres).filter((end) => end !== undefined);
  const wall = millimetres(wallMm);
  const size = [ends.join('/'), ...(wall === undefined ? [] : [wall])].join('\u00a0×\u00a0');
  return [catalogueOf(language).words[kind], material ?? '', ends.length > 0 ? size : ''];
}

/** What a quantity speaks of: a fill and its depths, or a pipe and its size; empty for the whole. */
export function sayOf(quantity: Quantity, language: Language): string {
  return [...sayZone(quantity, language), ...sayPipe(quantity, language)]
    .filter((part) => part !== '')
    .join(' ');
}

/** What is missing, in words, with its depths. */
export function sayMissing({ what, fromM, toM }: Missing, language: Language): string {
  const words = { ...catalogueOf(language).missing, ...quantityWords(language).missing };
  if (fromM === undefined || toM === undefined) return words[what];
  const mark = decimalMarks[language];
  return `${words[what]}, ${formatDepth(fromM, mark)}–${formatDepth(toM, mark)} m`;
}
