import type { Language } from '../../core/base/language.ts';

/** The language that the interface speaks; one for the whole page. */
class Speech {
  language = $state<Language>('en');
}

export const speech = new Speech();
