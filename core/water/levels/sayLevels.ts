import type { Language } from '../../base/language.ts';
import { bindMarks } from '../../base/text/bindMarks.ts';
import type { DryAssumptionCode } from '../../practice/reading/season/dryEstimate.ts';
import { english } from './words/en.ts';
import { french } from './words/fr.ts';
import { portuguese } from './words/pt.ts';
import type { LevelWords } from './words/words.ts';

const languageWords: Readonly<Record<Language, LevelWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of a language for levels and development. */
export function levelWords(language: Language): LevelWords {
  return languageWords[language];
}

/** What an estimate of the dry season's level rests on, a sentence. */
export function sayDryAssumption(code: DryAssumptionCode, language: Language): string {
  return bindMarks(levelWords(language).assumptions[code]);
}
