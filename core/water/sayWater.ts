import { decimalMarks, type Language } from '../base/language.ts';
import { formatShort } from '../base/numbers.ts';
import { bindMarks } from '../base/text/bindMarks.ts';
import { bindUnits } from '../base/text/bindUnits.ts';
import type { DisinfectionPlan, QualityNote, TravelTime } from './results.ts';
import { english } from './words/en.ts';
import { french } from './words/fr.ts';
import { portuguese } from './words/pt.ts';
import type { WaterWords } from './words/words.ts';

const languageWords: Readonly<Record<Language, WaterWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of a language for the water: samples, siting, disinfection. */
export function waterWords(language: Language): WaterWords {
  return languageWords[language];
}

/** A sentence with its values, to a tenth or as short as can be. */
function say(template: string, values: Readonly<Record<string, number>>, language: Language) {
  return bindUnits(bindMarks(template)).replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = values[name];
    return value === undefined ? place : formatShort(value, 1, decimalMarks[language]);
  });
}

/** A remark on a sample, as a sentence. */
export function sayNote({ code, values }: QualityNote, language: Language): string {
  return say(waterWords(language).quality.notes[code], values, language);
}

/** How a time on the way stands to a number of days, in a few words. */
export function sayReference(
  { days, stands }: TravelTime['references'][number],
  language: Language,
): string {
  return say(waterWords(language).siting.stands[stands], { days }, language);
}

/** How long the chlorine stands in the well, a sentence. */
export function sayContact({ contactH }: DisinfectionPlan, language: Language): string {
  const { least, advised } = contactH;
  const values = { leastH: least.value, fromH: advised.least, toH: advised.most };
  return say(waterWords(language).disinfection.contact, values, language);
}

/** When bacteria are sampled afterwards, a sentence. */
export function sayResample({ resample }: DisinfectionPlan, language: Language): string {
  const { waitDays, chlorineMgL } = resample;
  const values = { waitDays: waitDays.value, chlorineMgL: chlorineMgL.value };
  return say(waterWords(language).disinfection.resample, values, language);
}
