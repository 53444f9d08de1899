import type { Language } from '../../../../base/language.ts';
import type { CommitteeWords } from '../words.ts';
import { english } from './en.ts';
import { french } from './fr.ts';
import { portuguese } from './pt.ts';

const catalogues: Readonly<Record<Language, CommitteeWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of the committee sheet in a language. */
export function committeeWordsIn(language: Language): CommitteeWords {
  return catalogues[language];
}
