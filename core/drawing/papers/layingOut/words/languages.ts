import type { Language } from '../../../../base/language.ts';
import type { LayingOutWords } from '../words.ts';
import { english } from './en.ts';
import { french } from './fr.ts';
import { portuguese } from './pt.ts';

const catalogues: Readonly<Record<Language, LayingOutWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of the laying-out sheet in a language. */
export function layingOutWordsIn(language: Language): LayingOutWords {
  return catalogues[language];
}
