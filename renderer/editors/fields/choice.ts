import { choiceWords, say } from '../../parts/words.ts';
import { absent, readAs, unread, type Reading } from '../../state/field.ts';
import type { EntryField, Extras } from './entryField.ts';
import { folded } from './folded.ts';

/** Key in the record to the word that stands for it; the order is the one offered. */
export type Choices = Readonly<Record<string, string>>;

/**
 * Reads a word, the record's own key, a short code, or the beginning of a word where only one
 * begins so; they are tried in this order. `codes` are by the record's key.
 */
export function readChoice(text: string, choices: Choices, codes: Choices = {}): Reading {
  const wanted = folded(text);
  if (wanted === '' || wanted === say.table.choose) return absent;
  const entries = Object.entries(choices);
  const exact =
    entries.find(([key, word]) => folded(word) === wanted || folded(key) === wanted) ??
    entries.find(([key]) => codes[key] === wanted);
  if (exact) return readAs(exact[0]);
  const [first, second, ...more] = entries.filter(([, word]) => folded(word).startsWith(wanted));
  if (first && !second) return readAs(first[0]);
  if (!first || !second) return unread(say.reading.choice(text.trim()));
  const words = [first, second, ...more].slice(0, 4).map(([, word]) => word);
  return unread(say.reading.several(text.trim(), words.join(', ')));
}

/** Codes by word, for those words that are offered. */
export function codesByWord(words: Choices, codes: Choices): Choices {
  return Object.fromEntries(
    Object.entries(words).flatMap(([key, word]) => {
      const code = codes[key];
      return code === undefined ? [] : [[word, code]];
    }),
  );
}

/** Words to choose from: a list that opens, narrows down as it is typed, and takes codes. */
export function choiceField(
  name: string,
  label: string,
  words: Choices,
  extras: Extras = {},
  codes: Choices = {},
): EntryField {
  return {
    name,
    label,
    control: 'words',
    options: Object.values(words),
    codes: codesByWord(words, codes),
    ...extras,
    read: (text) => readChoice(text, words, codes),
    write: (value) => words[String(value)] ?? String(value),
  };
}

/** Yes, no, or not known. */
export function flagField(name: string, label: string): EntryField {
  const { yes, no } = choiceWords.yesNo;
  return {
    ...choiceField(name, label, choiceWords.yesNo),
    read: (text) => {
      const reading = readChoice(text, choiceWords.yesNo);
      return reading.ok && reading.value !== undefined ? readAs(reading.value === 'yes') : reading;
    },
    write: (value) => (value ? yes : no),
  };
}
