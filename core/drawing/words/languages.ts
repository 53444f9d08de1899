import type { Language } from '../../base/language.ts';
import { english } from './en.ts';
import { french } from './fr.ts';
import { portuguese } from './pt.ts';
import type { SheetWords } from './words.ts';

const catalogues: Readonly<Record<Language, SheetWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words that sheets print in a language. */
export function sheetWordsIn(language: Language): SheetWords {
  return catalogues[language];
}
