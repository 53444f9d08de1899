import type { Language } from '../../../../base/language.ts';
import { english } from './en.ts';
import { french } from './fr.ts';
import { portuguese } from './pt.ts';
import type { DetailWords } from './words.ts';

const catalogues: Readonly<Record<Language, DetailWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of details, site plan and revisions in a language. */
export function detailWordsIn(language: Language): DetailWords {
  return catalogues[language];
}
