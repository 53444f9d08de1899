import type { Language } from '../../../../base/language.ts';
import type { QualityWords } from '../qualityWords.ts';
import { english } from './qualityEn.ts';
import { french } from './qualityFr.ts';
import { portuguese } from './qualityPt.ts';

const catalogues: Readonly<Record<Language, QualityWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of the page of water quality in a language. */
export function qualityWordsIn(language: Language): QualityWords {
  return catalogues[language];
}
