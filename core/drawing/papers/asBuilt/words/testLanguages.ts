import type { Language } from '../../../../base/language.ts';
import type { TestWords } from '../testWords.ts';
import { english } from './testsEn.ts';
import { french } from './testsFr.ts';
import { portuguese } from './testsPt.ts';

const catalogues: Readonly<Record<Language, TestWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of the pages of pumping tests in a language. */
export function testWordsIn(language: Language): TestWords {
  return catalogues[language];
}
