import type { Language } from '../base/language.ts';
import type { Change } from './changesBetween.ts';
import { changeWordsIn } from './words/languages.ts';

/** How much is told. */
export interface Bounds {
  /** Sentences; a last one counts the others. */
  readonly sentences: number;
  /** Letters of a value, before it is cut. */
  readonly letters: number;
}

const usual: Bounds = { sentences: 12, letters: 90 };

function cut(text: string, letters: number): string {
  const all = [...text.replace(/\s+/g, ' ')];
  return all.length <= letters
    ? all.join('')
    : `${all
        .slice(0, letters - 1)
        .join('')
        .trimEnd()}…`;
}

function sayChange(change: Change, language: Language, letters: number): string {
  const words = changeWordsIn(language);
  if (change.kind === 'other')
    return words.other.replace('{chapter}', words.chapters[change.chapter]);
  const places: Readonly<Record<string, string>> = { before: '', now: '', ...change };
  return words[change.kind].replace(/\{(\w+)\}/g, (_, place: string) =>
    cut(places[place]!, letters),
  );
}

/** Changes as sentences, bounded in number and length; one sentence where nothing changed. */
export function sayChanges(
  changes: readonly Change[],
  language: Language,
  { sentences, letters }: Bounds = usual,
): string[] {
  const words = changeWordsIn(language);
  if (changes.length === 0) return [words.nothing];
  const told = changes.length <= sentences ? changes : changes.slice(0, sentences - 1);
  const left = changes.length - told.length;
  const said = told.map((one) => sayChange(one, language, letters));
  return left === 0 ? said : [...said, words.more.replace('{count}', String(left))];
}
