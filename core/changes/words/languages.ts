import type { Language } from '../../base/language.ts';
import { english } from './en.ts';
import { french } from './fr.ts';
import { portuguese } from './pt.ts';
import type { ChangeWords } from './words.ts';

const catalogues: Readonly<Record<Language, ChangeWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

export function changeWordsIn(language: Language): ChangeWords {
  return catalogues[language];
}
