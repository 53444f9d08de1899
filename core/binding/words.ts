import type { Language } from '../base/language.ts';

/** Words in the margins of a binder's pages; `{…}` are filled in. */
export interface MarginWords {
  readonly page: string;
  readonly revision: string;
  readonly noRevision: string;
  readonly volume: string;
}

export const marginWords: Readonly<Record<Language, MarginWords>> = {
  en: {
    page: 'Page {n} of {of}',
    revision: 'revision {n}',
    noRevision: 'no revision',
    volume: 'Volume {n} of {of}',
  },
  fr: {
    page: 'Page {n} sur {of}',
    revision: 'révision {n}',
    noRevision: 'sans révision',
    volume: 'Volume {n} sur {of}',
  },
  pt: {
    page: 'Página {n} de {of}',
    revision: 'revisão {n}',
    noRevision: 'sem revisão',
    volume: 'Volume {n} de {of}',
  },
};
