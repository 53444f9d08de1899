import type { Language } from './language.ts';

/** French and Portuguese count colony-forming units as `UFC` (from memory: ISO 8199 in French). */
const colonies: Readonly<Record<Language, string>> = { en: 'CFU', fr: 'UFC', pt: 'UFC' };
/** French writes a day as `j`, as the trade does (common practice). */
const days: Readonly<Record<Language, string>> = { en: 'd', fr: 'j', pt: 'd' };

/** A unit as a language writes it, as in `m²/j`; most are alike in all. */
export function sayUnit(unit: string, language: Language): string {
  return unit
    .replace(/\b(CFU|UFC)\b/, colonies[language])
    .replace(/(?<=^|\/)d(?=²|\/|$)/u, days[language]);
}
