import { sayUnit } from '../../../../base/sayUnit.ts';
import type { Interval } from '../../../../water/reckoned.ts';
import type { Comparison, ParameterResult, Reading } from '../../../../water/results.ts';
import { plainFigure, significantFigure } from '../../../figures.ts';
import type { Kit } from '../../../kit.ts';
import { bound } from '../../../letters.ts';
import type { QualityWords as WaterQualityWords } from '../../../../water/words/words.ts';
import type { QualityWords } from '../qualityWords.ts';

/** Words of the page of water quality beside those of all pages. */
export interface QualityKit extends Kit {
  readonly own: QualityWords;
  readonly water: WaterQualityWords;
}

/** A unit behind its figure; a plain number has none. */
function unitOf(unit: string | undefined): string {
  return unit === undefined || unit === '1' ? '' : `${bound}${unit}`;
}

/** A unit of the set of values, which is written as the sheet's language does. */
function setUnitOf({ words }: Kit, unit: string): string {
  return unitOf(sayUnit(unit, words.language));
}

/** A form of one element is the parameter itself: nobody says lead as lead. */
const oneElement = /^[A-Z][a-z]?$/;

function formOf({ own }: QualityKit, as: string | undefined): string {
  return as === undefined ? '' : ` ${own.as}${bound}${as}`;
}

/** The name of a parameter with the form that its values are told in. */
export function namedParameter(kit: QualityKit, { name, as = '' }: ParameterResult): string {
  const form = as === '' || oneElement.test(as) ? '' : formOf(kit, as);
  return name[kit.words.language] + form;
}

/** The result as it was written, with its unit, and its form where that is another than the set's. */
export function writtenFigure(kit: QualityKit, result: ParameterResult, reading: Reading): string {
  const { written, below } = reading;
  const { value, unit } = written;
  const as = written.as === result.as ? undefined : written.as;
  if (value === undefined) return '–';
  const sign = below ? `<${bound}` : '';
  return `${sign}${plainFigure(kit, value, 6)}${unitOf(unit)}${formOf(kit, as)}`;
}

/** In unit and form of the set: every value that it may be, where the form was not written. */
export function convertedFigure(
  kit: QualityKit,
  { unit }: ParameterResult,
  { possible, below }: Reading,
): string {
  if (possible.length === 0) return '–';
  const sign = below ? `<${bound}` : '';
  const values = possible.map((value) => `${sign}${significantFigure(kit, value)}`);
  return `${values.join(' / ')}${setUnitOf(kit, unit)}`;
}

export function limitFigure(kit: QualityKit, { written, below }: Reading): string {
  if (!below || written.value === undefined) return '';
  return `${plainFigure(kit, written.value, 6)}${unitOf(written.unit)}`;
}

/** A guideline value, with its form where that is another than the parameter's. */
export function valueFigure(kit: QualityKit, result: ParameterResult, one: Comparison): string {
  const { value } = one;
  const sign = value.bound === 'most' ? '≤' : '≥';
  const figure = plainFigure(kit, value.value, 6);
  const as = value.as === result.as ? undefined : value.as;
  return `${sign}${bound}${figure}${setUnitOf(kit, value.unit)}${formOf(kit, as)}`;
}

/** One figure where both bounds print alike. */
export function intervalFigure(kit: Kit, { least, most }: Interval, unit: string): string {
  const [from, to] = [least, most].map((value) => significantFigure(kit, value));
  return `${from === to ? from : `${from}–${to}`}${unitOf(unit)}`;
}
