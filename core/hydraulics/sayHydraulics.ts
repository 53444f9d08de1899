import { decimalMarks, type Language } from '../base/language.ts';
import { formatDepth, formatShort } from '../base/numbers.ts';
import { sayUnit } from '../base/sayUnit.ts';
import { bindMarks } from '../base/text/bindMarks.ts';
import { bindUnits } from '../base/text/bindUnits.ts';
import type { AssumptionCode, HintCode, IntervalBasis, SeriesNoteCode } from './codes.ts';
import type { Check, Estimate, Said } from './results.ts';
import { english } from './words/en.ts';
import { french } from './words/fr.ts';
import { portuguese } from './words/pt.ts';
import type { HydraulicsWords } from './words/words.ts';

const languageWords: Readonly<Record<Language, HydraulicsWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of a language for pumping tests. */
export function hydraulicsWords(language: Language): HydraulicsWords {
  return languageWords[language];
}

const digits = 3;
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
/** Smaller numbers are written with a power of ten. */
const leastPlain = 0.001;

function asPower(value: number, language: Language): string {
  const power = Math.floor(Math.log10(Math.abs(value)));
  const front = formatShort(value / 10 ** power, digits - 1, decimalMarks[language]);
  const exponent = [...String(Math.abs(power))].map((digit) => raised[Number(digit)]).join('');
  return `${front}\u00a0×\u00a010${power < 0 ? '⁻' : ''}${exponent}`;
}

/** A number to three digits, without what a pumping test cannot tell: `0.0193`, `1.2 × 10⁻⁴`. */
export function sayFigure(value: number, language: Language): string {
  if (value !== 0 && Math.abs(value) < leastPlain) return asPower(value, language);
  const before = Math.floor(Math.log10(Math.max(Math.abs(value), leastPlain))) + 1;
  const step = 10 ** Math.max(0, before - digits);
  const rounded = step > 1 ? Math.round(value / step) * step : value;
  return formatShort(rounded, Math.max(0, digits - before), decimalMarks[language]);
}

/** Levels are said to the centimetre, as they are read. */
const levels = ['readM', 'restM', 'intakeM'];
/** Minutes, days and margins are short enough to be said whole. */
const whole = ['minutes', 'first', 'days', 'hours', 'steps', 'storage', 'margin', 'limit'];

function fill(template: string, values: Said<string>['values'], language: Language): string {
  const bound = bindUnits(bindMarks(template));
  return bound.replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = values[name];
    if (value === undefined) return place;
    if (levels.includes(name)) return formatDepth(value, decimalMarks[language]);
    const long = whole.includes(name) && Math.abs(value) >= 1;
    return long ? formatShort(value, 1, decimalMarks[language]) : sayFigure(value, language);
  });
}

/** What a check found, a sentence. */
export function sayCheck({ code, holds, values }: Check, language: Language): string {
  const words = hydraulicsWords(language).checks[code];
  return fill(holds ? words.holds : words.fails, values, language);
}

/** What was taken for granted, a sentence. */
export function sayAssumption({ code, values }: Said<AssumptionCode>, language: Language): string {
  return fill(hydraulicsWords(language).assumptions[code], values, language);
}

/** What a shape may come from, a sentence. */
export function sayHint({ code, values }: Said<HintCode>, language: Language): string {
  return fill(hydraulicsWords(language).hints[code], values, language);
}

/** What is said at the row of a reading or of its series, a sentence. */
export function saySeriesNote({ code, values }: Said<SeriesNoteCode>, language: Language): string {
  return fill(hydraulicsWords(language).seriesNotes[code], values, language);
}

/** How an interval was come by. */
export function sayBasis(basis: IntervalBasis, language: Language): string {
  return hydraulicsWords(language).bases[basis];
}

/** A value with its interval and unit, as in `58.3 (57.6–59) m²/d`. */
export function sayEstimate({ value, unit, interval }: Estimate, language: Language): string {
  const figure = (one: number) => sayFigure(one, language);
  const printed = unit === '1' ? '' : `\u00a0${sayUnit(unit, language)}`;
  if (!interval) return figure(value) + printed;
  const { lowest, highest } = interval;
  const span =
    highest === undefined ? `≥\u00a0${figure(lowest)}` : `${figure(lowest)}–${figure(highest)}`;
  return `${figure(value)} (${span})${printed}`;
}
