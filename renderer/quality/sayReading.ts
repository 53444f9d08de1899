import { decimalMarks, type Language } from '../../core/base/language.ts';
import { formatShort } from '../../core/base/numbers.ts';
import { sayUnit } from '../../core/base/sayUnit.ts';
import type { HeldValue } from '../../core/water/guidelines/guidelineSet.ts';
import type { ParameterResult, Reading } from '../../core/water/results.ts';
import { say } from '../parts/words.ts';

/** Laboratories give three or four digits; conversions would add more. */
export function sayResult(value: number, language: Language): string {
  const size = Math.abs(value);
  const decimals = size === 0 ? 0 : Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(size))));
  return formatShort(value, decimals, decimalMarks[language]);
}

/** A figure with unit and form, as in `12 mg/l NO3`; a plain number has no unit. */
export function withUnit(figure: string, unit: string | undefined, as: string | undefined): string {
  const parts = [figure, unit === '1' ? undefined : unit, as];
  return parts.filter((part) => part !== undefined && part !== '').join('\u00a0');
}

/** A reading in the unit of its parameter; undefined where it could not be converted. */
export function sayReading(
  reading: Reading,
  { unit, as }: Pick<ParameterResult, 'unit' | 'as'>,
  language: Language,
): string | undefined {
  if (reading.value === undefined) return undefined;
  const told = withUnit(sayResult(reading.value, language), sayUnit(unit, language), as);
  return reading.below ? say.quality.below(told) : told;
}

/** As it stands in the record. */
export function sayWritten({ written, below }: Reading, language: Language): string {
  const { value, unit, as } = written;
  if (value === undefined) return '–';
  const told = withUnit(formatShort(value, 6, decimalMarks[language]), unit, as);
  return below ? say.quality.below(told) : told;
}

/** A guideline value with its bound. */
export function sayValue({ bound, value, unit, as }: HeldValue, language: Language): string {
  const told = withUnit(sayResult(value, language), sayUnit(unit, language), as);
  return bound === 'most' ? say.quality.most(told) : say.quality.least(told);
}
