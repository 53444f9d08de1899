import type { Refusal } from '../../base/result.ts';
import { decimalMarks, type Language } from '../../base/language.ts';
import { bindMarks } from '../../base/text/bindMarks.ts';
import { sayPhrase } from '../../record/phrases/sayPhrase.ts';
import { english } from './english.ts';
import { french } from './french.ts';
import { portuguese } from './portuguese.ts';
import type { Reason, ReasonTexts } from './reason.ts';

const catalogues: Readonly<Record<Language, ReasonTexts>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The reasons of a language, with their `{places}` still open. */
export function reasonsOf(language: Language): ReasonTexts {
  return catalogues[language];
}

export type SayRefusal = (refusal: Refusal) => string;

/**
 * A reason in the words of a language, with what it names. A refusal is said by whoever has words
 * for it, else in its own English sentence.
 */
export function sayReason(
  { code, values }: Reason,
  language: Language,
  sayRefusal: SayRefusal = ({ sentence }) => sentence,
): string {
  return bindMarks(reasonsOf(language)[code]).replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined) return place;
    if (typeof value === 'string') return value;
    if (typeof value === 'number') return String(value).replace('.', decimalMarks[language]);
    if ('phrase' in value) return sayPhrase(value.phrase, language);
    if ('refusal' in value) return sayRefusal(value.refusal);
    return sayReason(value, language, sayRefusal);
  });
}
