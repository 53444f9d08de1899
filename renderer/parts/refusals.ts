import type { Language } from '../../core/base/language.ts';
import type { Refusal } from '../../core/base/result.ts';
import { speech } from '../state/language.svelte.ts';
import { refusals as french } from './words/fr/refusals.ts';
import { refusals as portuguese } from './words/pt/refusals.ts';

/** The service speaks English: only other languages have texts of their own. */
export const refusalTexts = { fr: french, pt: portuguese } satisfies Partial<
  Record<Language, Readonly<Record<string, string>>>
>;

/** Why something was not done, in the language in use; in the service's words where it has none. */
export function sayRefusal({ code, sentence }: Refusal): string {
  const texts: Partial<Record<Language, Readonly<Record<string, string>>>> = refusalTexts;
  return texts[speech.language]?.[code] ?? sentence;
}
