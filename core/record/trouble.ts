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

/** What a trouble says as a phrase that starts with its place. */
export function troublePhrase({
  path,
  code,
  values,
}: Pick<Trouble, 'path' | keyof Phrase>): Phrase {
  return phrase('trouble', { place: path || phrase('record'), says: { code, values } });
}

function said(path: RecordPath, says: Phrase, language: Language): string {
  return sayPhrase(troublePhrase({ path, ...says }), language);
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
