import { decimalMarks, type Language } from '../../base/language.ts';
import { formatDepth, formatShort } from '../../base/numbers.ts';
import { bindMarks } from '../../base/text/bindMarks.ts';
import { bindUnits } from '../../base/text/bindUnits.ts';
import { repairLevels } from './pumpKind.ts';
import type { CautionCode, PumpMissing, PumpQuantity, Reason } from './ranking.ts';
import { english } from './words/en.ts';
import { french } from './words/fr.ts';
import { portuguese } from './words/pt.ts';
import type { PumpWords } from './words/words.ts';

const languageWords: Readonly<Record<Language, PumpWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of a language for the choice of a pump. */
export function pumpWords(language: Language): PumpWords {
  return languageWords[language];
}

/** Metres, whose names end in M, to the centimetre; what was reckoned to three digits or so. */
function sayValue(name: string, value: number | string, language: Language): string {
  const mark = decimalMarks[language];
  if (typeof value === 'number')
    return name.endsWith('M') ? formatDepth(value, mark) : formatShort(value, digits(value), mark);
  const level = repairLevels.find((one) => one === value);
  return level ? pumpWords(language).repairs[level] : value;
}

function digits(value: number): number {
  return value < 10 ? 2 : value < 100 ? 1 : 0;
}

/** Why a kind suits or does not, a sentence. */
export function sayReason({ code, values }: Reason, language: Language): string {
  return bindUnits(bindMarks(pumpWords(language).reasons[code])).replace(
    /\{(\w+)\}/g,
    (place, name: string) => {
      const value = values[name];
      return value === undefined ? place : sayValue(name, value, language);
    },
  );
}

export function sayCaution(code: CautionCode, language: Language): string {
  return bindMarks(pumpWords(language).cautions[code]);
}

export function sayPumpMissing({ what }: PumpMissing, language: Language): string {
  return pumpWords(language).missing[what];
}

/** A quantity with its unit, as in `1.2 m³/h`. */
export function sayPumpQuantity({ value, unit }: PumpQuantity, language: Language): string {
  const figure = formatShort(value, digits(Math.abs(value)), decimalMarks[language]);
  const word = pumpWords(language).units[unit];
  return word === '' ? figure : `${figure}\u00a0${word}`;
}
