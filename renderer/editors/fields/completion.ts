import type { EntryField } from './entryField.ts';
import { folded } from './folded.ts';

/** How well a word answers to what was typed: the less the better, undefined where not at all. */
function rank(word: string, code: string | undefined, typed: string): number | undefined {
  const name = folded(word);
  if (code === typed) return 0;
  if (name === typed) return 1;
  if (name.startsWith(typed)) return 2;
  return name.split(/[\s'-]+/).some((part) => part.startsWith(typed)) ? 3 : undefined;
}

/** Words that answer to a text: by their code, their beginning, the beginning of a later part. */
export function completionsOf(field: EntryField, text: string): readonly string[] {
  const typed = folded(text.slice(field.wordAt?.(text) ?? 0));
  const options = field.options ?? [];
  if (typed === '') return options;
  const ranked = options.flatMap((word) => {
    const value = rank(word, field.codes?.[word], typed);
    return value === undefined ? [] : [{ word, value }];
  });
  return ranked.sort((a, b) => a.value - b.value).map(({ word }) => word);
}

/** The text with a word in place of the one that is being typed. */
export function completed(field: EntryField, text: string, word: string): string {
  return text.slice(0, field.wordAt?.(text) ?? 0) + word;
}
