import type { BinderWish } from './binderShape.ts';
import { volumeBounds } from './binderShape.ts';
import type { Language } from '../base/language.ts';

/** A binder of all wells of an archive with their as-built drawings, to be printed on both sides. */
export function usualBinder(title: string, language: Language): BinderWish {
  return {
    title,
    madeBy: '',
    language,
    wells: {},
    papers: [{ kind: 'asBuilt', language }],
    paper: 'A4',
    duplex: true,
    sections: [],
    backdrop: true,
    mostPages: volumeBounds.usual,
  };
}
