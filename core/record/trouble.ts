import type { Language } from '../base/language.ts';
import type { RecordPath } from '../base/recordPath.ts';
import { phrase, type Phrase } from './phrases/phrase.ts';
import { sayPhrase } from './phrases/sayPhrase.ts';

/** What is wrong with a record at one place. */
export interface Trouble extends Phrase {
  readonly path: RecordPath;
  /** The trouble in English, starting with its place. */
  readonly sentence: string;
}

function said(path: RecordPath, says: Phrase, language: Language): string {
  const place = path || phrase('record');
  return sayPhrase(phrase('trouble', { place, says }), language);
}

/** A trouble whose sentence starts with its place; the empty path is the whole record. */
export function troubleAt(path: RecordPath, says: Phrase): Trouble {
  const { code, values } = says;
  return { path, code, values, sentence: said(path, says, 'en') };
}

/** A trouble as a sentence of a language that starts with its place. */
export function sayTrouble({ path, code, values }: Trouble, language: Language): string {
  return said(path, { code, values }, language);
}
