import type { Language } from '../../core/base/language.ts';
import type { Refusal } from '../../core/base/result.ts';
import { say } from './words.ts';
import { speech } from '../state/language.svelte.ts';
import { refusals as french } from './words/fr/refusals.ts';
import { refusals as portuguese } from './words/pt/refusals.ts';

/** The service speaks English: only other languages have texts of their own. */
export const refusalTexts = { fr: french, pt: portuguese } satisfies Partial<
  Record<Language, Readonly<Record<string, string>>>
>;

/** A sentence with more places than this grows too long to be read. */
const mostPlaces = 6;

/**
 * Why something was not done, in the language in use, with the places of a file that it speaks of;
 * in the service's words where it has none.
 */
export function sayRefusal({ code, sentence, at = [] }: Refusal): string {
  const texts: Partial<Record<Language, Readonly<Record<string, string>>>> = refusalTexts;
  const text = texts[speech.language]?.[code];
  if (text === undefined) return sentence;
  if (at.length === 0) return text;
  const named = at.slice(0, mostPlaces);
  return `${text} ${say.inFile(named.join(', '), at.length - named.length)}`;
}
