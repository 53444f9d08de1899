import { decimalMarks, type Language } from '../../base/language.ts';
import { bindMarks } from '../../base/text/bindMarks.ts';
import { english } from './english.ts';
import { french } from './french.ts';
import type { Phrase, PhraseTexts } from './phrase.ts';
import { portuguese } from './portuguese.ts';

const catalogues: Readonly<Record<Language, PhraseTexts>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The phrases of a language, with their `{places}` still open. */
export function phrasesOf(language: Language): PhraseTexts {
  return catalogues[language];
}

/** A figure as a person compares it: 8 stands as 8.0, thousandths at most. */
function figure(value: number): string {
  const text = String(Math.round(value * 1000) / 1000);
  return text.includes('.') ? text : `${text}.0`;
}

/** Names that end in `figure` hold readings to be compared; other numbers are counts and limits. */
function sayNumber(name: string, value: number, language: Language): string {
  const text = /figure$/i.test(name) ? figure(value) : String(value);
  return text.replace('.', decimalMarks[language]);
}

/** A phrase in the words of a language, with the phrases within it. */
export function sayPhrase({ code, values }: Phrase, language: Language = 'en'): string {
  return bindMarks(phrasesOf(language)[code]).replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined) return place;
    if (typeof value === 'string') return value;
    if (typeof value === 'number') return sayNumber(name, value, language);
    return sayPhrase(value, language);
  });
}
