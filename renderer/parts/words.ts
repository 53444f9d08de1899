import type { Language } from '../../core/base/language.ts';
import { sheetWordsIn } from '../../core/drawing/words/languages.ts';
import type { SheetWords } from '../../core/drawing/words/words.ts';
import { speech } from '../state/language.svelte.ts';
import type { ChoiceWords, FieldWords, InterfaceWords } from './words/catalogue.ts';
import { choices as englishChoices } from './words/en/choices.ts';
import { fields as englishFields } from './words/en/fields.ts';
import { english } from './words/en/index.ts';
import { choices as frenchChoices } from './words/fr/choices.ts';
import { fields as frenchFields } from './words/fr/fields.ts';
import { french } from './words/fr/index.ts';
import { choices as portugueseChoices } from './words/pt/choices.ts';
import { fields as portugueseFields } from './words/pt/fields.ts';
import { portuguese } from './words/pt/index.ts';

type InEach<T> = Readonly<Record<Language, T>>;

export const interfaces: InEach<InterfaceWords> = { en: english, fr: french, pt: portuguese };
export const fieldNames: InEach<FieldWords> = {
  en: englishFields,
  fr: frenchFields,
  pt: portugueseFields,
};
export const choiceNames: InEach<ChoiceWords> = {
  en: englishChoices,
  fr: frenchChoices,
  pt: portugueseChoices,
};

/** A catalogue whose texts are looked up at each use, so that they follow the language chosen. */
function spoken<T extends object>(catalogues: InEach<T>): T {
  const words = {};
  for (const key of Object.keys(catalogues.en))
    Object.defineProperty(words, key, {
      get: () => catalogues[speech.language][key as keyof T],
      enumerable: true,
    });
  return words as T;
}

/** The interface's words in the language in use. */
export const say = spoken(interfaces);

/** Names of the record's fields. */
export const fieldWords = spoken(fieldNames);

/** Words to choose from that no sheet prints. */
export const choiceWords = spoken(choiceNames);

/** Words that the sheets print too, in the language in use. */
export function sheetWords(): SheetWords {
  return sheetWordsIn(speech.language);
}
