import { decimalMarks, type Language } from '../base/language.ts';
import { formatDepth, formatShort } from '../base/numbers.ts';
import { bindMarks } from '../base/text/bindMarks.ts';
import type { Obstacle, Proposal, SaidValues } from './proposal.ts';
import { english } from './words/en.ts';
import { french } from './words/fr.ts';
import { portuguese } from './words/pt.ts';
import type { LayingOutWords } from './words/words.ts';

const languageWords: Readonly<Record<Language, LayingOutWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of a language for laying out. */
export function layingOutWords(language: Language): LayingOutWords {
  return languageWords[language];
}

/** Depths and lengths, whose names end in M, to the centimetre; other figures as short as can be. */
function say(template: string, values: SaidValues, language: Language): string {
  const mark = decimalMarks[language];
  return bindMarks(template).replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = values[name];
    if (typeof value !== 'number') return value ?? place;
    return name.endsWith('M') ? formatDepth(value, mark) : formatShort(value, 3, mark);
  });
}

/** In what a proposal is the best, a sentence. */
export function sayWhy({ why }: Proposal, language: Language): string {
  return say(layingOutWords(language).why[why.code], why.values, language);
}

/** Which limit stands in the way, and what would help. */
export function sayObstacle({ code, values }: Obstacle, language: Language): string {
  return say(layingOutWords(language).obstacles[code], values, language);
}
