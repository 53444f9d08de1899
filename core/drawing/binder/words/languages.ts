import type { Language } from '../../../base/language.ts';
import { english } from './en.ts';
import { french } from './fr.ts';
import { portuguese } from './pt.ts';
import type { BinderWords } from './words.ts';

const catalogues: Readonly<Record<Language, BinderWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of the binder's own pages in a language. */
export function binderWordsIn(language: Language): BinderWords {
  return catalogues[language];
}
